using System.Collections.Immutable;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Surveys;

namespace Rodwright.Rod.Assembly;

/// <summary>Two strings and the steps that are housed in these two alone: what can be glued up on its own.</summary>
/// <param name="Strings">Ids of the two strings.</param>
/// <param name="Steps">Ids of what goes between them, from the bottom.</param>
/// <param name="Passes">Whether it goes in whole by the way in; also where none was measured.</param>
internal sealed record ShopFlight(ImmutableArray<string> Strings, ImmutableArray<string> Steps, bool Passes)
{
    /// <summary>Ids of all of it.</summary>
    public IEnumerable<string> All => Strings.Concat(Steps);

    /// <summary>The flights of a kit, from the bottom; no string is in two.</summary>
    public static ImmutableArray<ShopFlight> Of(Kit kit)
    {
        var (carriers, taken) = (Carriers.Of(kit), new HashSet<string>());
        var verdicts = SurveyReport.Of(kit).WayIn;
        var flights = new List<(int First, ShopFlight Flight)>();
        var pairs = kit.Parts.Where(p => p.Step > 0 && carriers.Take(p.Id).Length == 2 && carriers.Take(p.Id).All(c => kit.Find(c).Kind != PartKind.Newel))
            .GroupBy(p => string.Join('\n', carriers.Take(p.Id))).OrderByDescending(g => g.Count()).ThenBy(g => g.Min(p => p.Step));
        foreach (var pair in pairs.Where(g => g.Count() > 2))
        {
            var strings = carriers.Take(pair.First().Id);
            if (strings.Any(taken.Contains)) continue;
            taken.UnionWith(strings);
            var steps = pair.ToDictionary(p => p.Id);
            // Wedges and blocks that are joined to nothing but these go with them.
            var on = kit.Joints.ToLookup(j => j.Male, j => j.Female);
            foreach (var part in kit.Parts.Where(p => !Carriers.Is(p) && p.Step > 0 && !steps.ContainsKey(p.Id) && carriers.Take(p.Id).Length < 2).ToList())
                if (on[part.Id].Any() && on[part.Id].All(id => steps.ContainsKey(id) || strings.Contains(id)) && IsOfStep(part)) steps[part.Id] = part;

            // What is let into a string belongs to the step there, and that to the flight.
            bool IsOfStep(Part part) => steps.Values.Any(p => p.Step == part.Step);
            var marks = strings.Select(s => kit.Find(s).Mark).ToList();
            var passes = verdicts.Where(v => v.Piece.Together && marks.TrueForAll(m => v.Piece.Mark.Split(" + ").Contains(m))).All(v => v.Passes);
            flights.Add((pair.Min(p => p.Step), new(strings, [.. kit.Parts.Where(p => steps.ContainsKey(p.Id)).OrderBy(p => p.Step).ThenBy(p => p.Kind is PartKind.Riser or PartKind.TaperedRiser ? 0 : 1).Select(p => p.Id)], passes)));
        }
        return [.. flights.OrderBy(f => f.First).Select(f => f.Flight)];
    }
}
