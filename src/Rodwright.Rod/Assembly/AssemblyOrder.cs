using System.Collections.Immutable;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Assembly;

/// <summary>
/// The order in which a stair goes together, read from its parts and joints. Flights are glued up first, where they go in whole; then newels and strings are stood from the
/// bottom; a step that is let into several of them follows the last one; whatever else there is follows what it is joined to.
/// </summary>
public static class AssemblyOrder
{
    /// <summary>The stages in order; the first is a dry fit, at which nothing is fitted for good.</summary>
    public static ImmutableArray<AssemblyStage> Of(Kit kit)
    {
        var (carriers, flights) = (Carriers.Of(kit), ShopFlight.Of(kit));
        var (stages, placed, standing) = (new List<AssemblyStage>(), new HashSet<string>(), new List<string>());
        stages.Add(new("Dry fit", AssemblyPlace.Shop, [], [.. kit.Parts.Select(p => p.Id)], [], AssemblyWords.DryFit(kit)));
        foreach (var flight in flights.Where(f => f.Passes))
        {
            stages.Add(new($"Glue up {AssemblyWords.Marks(kit, flight.Strings)}", AssemblyPlace.Shop, [.. flight.All], [], [], AssemblyWords.Flight(kit, flight)));
            placed.UnionWith(flight.All);
        }
        // Newels before the strings that begin at the same step.
        var units = kit.Parts.Where(p => Carriers.Is(p) && !placed.Contains(p.Id)).Select(p => (Ids: (ImmutableArray<string>)[p.Id], Flight: (ShopFlight?)null))
            .Concat(flights.Where(f => f.Passes).Select(f => (Ids: f.Strings, Flight: (ShopFlight?)f)))
            .OrderBy(u => u.Ids.Min(carriers.Lowest)).ThenBy(u => kit.Find(u.Ids[0]).Kind == PartKind.Newel ? 0 : 1).ThenBy(u => kit.Parts.IndexOf(kit.Find(u.Ids[0]))).ToList();
        foreach (var level in units.GroupBy(u => (u.Ids.Min(carriers.Lowest), u.Flight is null ? kit.Find(u.Ids[0]).Kind == PartKind.Newel : false)))
        {
            ImmutableArray<string> fresh = [.. level.Where(u => u.Flight is null).SelectMany(u => u.Ids)];
            ImmutableArray<string> moved = [.. level.SelectMany(u => u.Flight?.All ?? [])];
            var title = AssemblyWords.Standing(kit, fresh, moved);
            Stage([.. fresh, .. Pegs(kit, placed, [.. standing, .. fresh, .. moved])], moved, title);
            Stage(Steps(kit, carriers, placed, standing), [], "Steps");
        }
        // Whatever is not a step and stands on nothing that carries steps: rails, caps, and what hangs on them; each after what it is let into.
        var last = Last(kit, placed).ToLookup(id => kit.Find(id).Kind is PartKind.Carriage or PartKind.CarriageBracket);
        Stage([.. last[true]], [], last[true].Count(id => kit.Find(id).Kind == PartKind.Carriage) == 1 ? "Fix the carriage" : "Fix the carriages");
        Stage([.. last[false]], [], last[false].Any(id => kit.Find(id).Kind is PartKind.Handrail or PartKind.WallRail or PartKind.NewelCap) ? "Rails, caps and what is left" : "What is left");
        return [.. stages];

        void Stage(ImmutableArray<string> fresh, ImmutableArray<string> moved, string title)
        {
            if (fresh.IsEmpty && moved.IsEmpty) return;
            if (title == "Steps") title = AssemblyWords.Steps(kit, fresh);
            stages.Add(new(title, AssemblyPlace.Site, fresh, moved, [.. standing], AssemblyWords.Site(kit, fresh, moved, standing)));
            placed.UnionWith(fresh);
            standing.AddRange(moved.Concat(fresh));
        }
    }

    /// <summary>Parts of steps that everything they are let into now stands for, from the bottom.</summary>
    private static ImmutableArray<string> Steps(Kit kit, Carriers carriers, HashSet<string> placed, List<string> standing)
    {
        var (there, found) = (standing.ToHashSet(), new List<string>());
        for (var any = true; any;)
        {
            any = false;
            foreach (var part in kit.Parts.Where(p => p.Step > 0 && !Carriers.Is(p) && !placed.Contains(p.Id) && !found.Contains(p.Id)))
            {
                var into = carriers.Take(part.Id);
                // One let into nothing follows all it is put on.
                var needs = into.IsEmpty ? [.. kit.Joints.Where(j => j.Male == part.Id).Select(j => j.Female)] : into;
                if (needs.IsEmpty || !needs.All(n => there.Contains(n) || found.Contains(n))) continue;
                found.Add(part.Id);
                any = true;
            }
        }
        return [.. found.Select(kit.Find).OrderBy(p => p.Step).ThenBy(p => p.Kind is PartKind.Block ? 0 : p.Kind is PartKind.Riser or PartKind.TaperedRiser or PartKind.BentRiser ? 1 : p.Kind is PartKind.Wedges ? 2 : 3).Select(p => p.Id)];
    }

    /// <summary>Pegs whose post stands with every string that is tenoned into it.</summary>
    private static IEnumerable<string> Pegs(Kit kit, HashSet<string> placed, HashSet<string> there) => kit.Joints
        .Where(j => j.Kind == JointKind.PegInBore && !placed.Contains(j.Male) && there.Contains(j.Female) && kit.Joints.Where(t => t.Kind == JointKind.Tenon && t.Female == j.Female).All(t => there.Contains(t.Male)))
        .Select(j => j.Male).Distinct();

    /// <summary>What is left, each piece after all that it enters; where pieces enter one another in a ring, in the kit's order.</summary>
    private static List<string> Last(Kit kit, HashSet<string> placed)
    {
        var (left, order) = (kit.Parts.Where(p => !placed.Contains(p.Id)).Select(p => p.Id).ToList(), new List<string>());
        while (left.Count > 0)
        {
            var next = left.Find(id => !kit.Joints.Any(j => j.Male == id && j.Female != id && left.Contains(j.Female))) ?? left[0];
            left.Remove(next);
            order.Add(next);
        }
        return order;
    }
}
