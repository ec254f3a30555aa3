using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Surveys;
using Rodwright.Rod.Tables;
using Rodwright.Stairs.Findings;

namespace Rodwright.Rod.Assembly;

/// <summary>What the stages say.</summary>
public static class AssemblyWords
{
    /// <summary>Said once, before all stages.</summary>
    public static IEnumerable<string> Cautions(Kit kit)
    {
        ArgumentNullException.ThrowIfNull(kit);
        yield return "The local code and safe practice decide how the work is done: two or more people or a hoist to lift a flight, props under it until it is fixed top and bottom, the well and the open side guarded meanwhile; "
            + "dust drawn off at the saw and the router, a mask for what is not; glue as its maker says, open time, cramping time and warmth of the shop included.";
        yield return kit.Plan.Job.Survey.WayIn.Count == 0
            ? "The way in was not measured: whether a flight that is glued up goes through it must be seen before it is glued."
            : SurveyReport.Of(kit).Largest is { } largest ? $"The largest that goes in whole by the way that was measured: {largest.Name}, {largest.Mark}." : "By the way in that was measured nothing of the strings and newels goes in whole: see the findings.";
    }

    internal static string DryFit(Kit kit)
    {
        var tenons = kit.Joints.Count(j => j.Kind == JointKind.Tenon);
        return "At the bench, without glue: strings on their steps, "
            + (tenons > 0 ? $"{Count(tenons, "tenon")} in their mortices with steel draw pins, " : "")
            + "every shoulder closed and every piece marked to its place. Then take it apart again.";
    }

    internal static string Flight(Kit kit, ShopFlight flight)
    {
        var glued = kit.Joints.Count(j => j.Kind == JointKind.RiserToTread && flight.Steps.Contains(j.Male) && flight.Steps.Contains(j.Female));
        return $"{Marks(kit, flight.Strings)} with {Named(kit, flight.Steps)}, seen from below. Glue each tread to its riser, square, blocks rubbed in behind; stand them in one string laid face up, the other on top, cramped or propped from above. "
            + (glued > 0 ? $"Glue and screw {(glued == 1 ? "the riser's foot to the tread's back" : $"the {Number.Print(glued, 0)} risers' feet to the treads' backs")}. " : "")
            + "Knock the treads up to their nosings; glue and drive the tread wedges from below, trim them, then the riser wedges. Check the diagonals before the glue takes. "
            + (kit.Plan.Job.Survey.WayIn.Count > 0 ? "Put together it passes the way in." : "It is meant to go in whole.");
    }

    internal static string Standing(Kit kit, IReadOnlyCollection<string> fresh, IReadOnlyCollection<string> moved)
    {
        var strings = moved.Select(kit.Find).Where(Carriers.Is).Select(p => p.Id).ToList();
        var verb = strings.Count > 0 ? "Bring in and fix" : fresh.Select(kit.Find).All(p => p.Kind == PartKind.Newel) ? "Stand and plumb" : "Fix";
        return $"{verb} {Marks(kit, [.. strings, .. fresh])}";
    }

    internal static string Steps(Kit kit, IReadOnlyCollection<string> fresh)
    {
        var steps = fresh.Select(id => kit.Find(id).Step).Distinct().Order().ToList();
        return steps.Count == 1 ? $"Step {Number.Print(steps[0], 0)}" : $"Steps {Ranges(steps)}, from the bottom";
    }

    internal static string Site(Kit kit, IReadOnlyCollection<string> fresh, IReadOnlyCollection<string> moved, IReadOnlyCollection<string> standing)
    {
        var (here, there) = (fresh.Concat(moved).ToHashSet(), standing.ToHashSet());
        // Joints that close now: between what comes and what stands, or among what is new.
        var closing = kit.Joints.Where(j => (here.Contains(j.Male) && there.Contains(j.Female)) || (there.Contains(j.Male) && here.Contains(j.Female))
            || (here.Contains(j.Male) && here.Contains(j.Female) && !(moved.Contains(j.Male) && moved.Contains(j.Female)))).ToList();
        var words = new List<string> { $"{Sentence.Begin(Named(kit, [.. fresh, .. moved.Where(id => Carriers.Is(kit.Find(id)))]))}." };
        if (fresh.Any(id => kit.Find(id).Kind == PartKind.Newel)) words.Add("Plumb each newel both ways, its foot or its notch fixed as the site allows, and brace it.");
        if (closing.Any(j => j.Kind == JointKind.Tenon))
            words.Add($"Glue and close {Pairs(kit, closing, JointKind.Tenon)}: pull the shoulders up with draw pins, then drive the draw-bore pegs.");
        if (closing.Any(j => j.Kind == JointKind.Corner))
        {
            words.Add(closing.Any(j => j.Kind == JointKind.Corner && kit.Find(j.Female).Cuts.Any(c => c.Kind == CutKind.Dovetail))
                ? $"Slide the tails of {Pairs(kit, closing, JointKind.Corner)} from the lower string's end, glued, before either is fixed to its wall; drive both into the corner together."
                : $"Close {Pairs(kit, closing, JointKind.Corner)} in the corner, glued, screwed from behind where it can be reached.");
        }
        if (closing.Any(j => j.Kind == JointKind.UnderString && kit.Find(j.Male).Kind == PartKind.Handrail))
            words.Add($"Scribe and screw up beneath the string above: {string.Join(", ", closing.Where(j => j.Kind == JointKind.UnderString && kit.Find(j.Male).Kind == PartKind.Handrail).Select(j => $"{kit.Find(j.Male).Mark} under {kit.Find(j.Female).Mark}"))}; the balusters past it are cut to the same edge and skew-nailed.");
        if (closing.Any(j => j.Kind == JointKind.NosingOnApron)) words.Add($"Pack out and pin {string.Join(", ", closing.Where(j => j.Kind == JointKind.NosingOnApron).Select(j => kit.Find(j.Female).Mark))} over the trimmer, then glue and pin the nosing on it"
            + (closing.Any(j => j.Kind == JointKind.EdgeCorner) ? "; round the well one after another, each corner tried before the piece is fixed." : "."));
        if (closing.Any(j => j.Kind is JointKind.TreadHousing or JointKind.RiserHousing && !moved.Contains(j.Male)))
        {
            words.Add("Slide them up into their housings from behind and below; glue and drive the wedges from below, treads first, then risers.");
            if (closing.Any(j => j.Kind == JointKind.RiserHousing && kit.Find(j.Female).Kind == PartKind.Newel)) words.Add("At a newel screw from behind: there is no wedge.");
        }
        if (closing.Any(j => j.Kind == JointKind.RiserToTread)) words.Add("Glue and screw the feet of risers to the backs of treads.");
        if (closing.Any(j => j.Kind == JointKind.BlockToNewel)) words.Add("Screw the rounded step's block to the newel.");
        if (closing.Any(j => j.Kind == JointKind.WedgesInSlot)) words.Add("Bend the glued veneer round the block and draw it tight with the folding wedges.");
        if (closing.Any(j => j.Kind == JointKind.BracketToCarriage))
            words.Add("Under its flight from below, midway between the strings, once the wedges hold: foot down, head to the trimmer, upper edge along the risers. Glue and nail the brackets to its side, tight under the treads.");
        if (fresh.Concat(moved).Any(id => kit.Find(id).Kind == PartKind.WallString)) words.Add("Scribe the wall string home and screw it to the wall where treads and skirting cover the heads.");
        return string.Join(' ', words);
    }

    /// <summary>W1, F1.</summary>
    internal static string Marks(Kit kit, IEnumerable<string> ids) => string.Join(", ", ids.Select(id => kit.Find(id).Mark));

    private static string Named(Kit kit, IReadOnlyCollection<string> ids)
    {
        var words = new List<string>();
        foreach (var group in ids.Select(kit.Find).GroupBy(p => (Kind: Sort(p.Kind), IsCarrier: Carriers.Is(p))))
        {
            var parts = group.Key.Kind is PartKind.Tread or PartKind.Riser ? group.OrderBy(p => p.Step).ToList() : [.. group];
            words.Add(parts.Count == 1 || group.Key.IsCarrier ? string.Join(", ", parts.Select(Called))
                : parts.Select(p => p.Mark).Distinct().ToList() is { Count: var n } marks && n * 2 <= parts.Count ? string.Join(", ", marks.Select(m => $"{Number.Print(parts.Count(p => p.Mark == m), 0)} {m}"))
                : new EqualParts([.. parts]).Marks);
        }
        return string.Join("; ", words);
    }

    // Told together, straight or tapered.
    private static PartKind Sort(PartKind kind) => kind switch { PartKind.TaperedTread => PartKind.Tread, PartKind.TaperedRiser => PartKind.Riser, _ => kind };

    /// <summary>"tread T13", the number told once, in its mark; "bottom newel N1".</summary>
    private static string Called(Part part)
    {
        var cut = part.Name.LastIndexOf(' ');
        return $"{(cut > 0 && part.Name[(cut + 1)..].All(char.IsAsciiDigit) ? part.Name[..cut] : part.Name)} {part.Mark}";
    }

    private static string Pairs(Kit kit, IEnumerable<Joint> joints, JointKind kind) =>
        string.Join(", ", joints.Where(j => j.Kind == kind).Select(j => $"{kit.Find(j.Male).Mark} in {kit.Find(j.Female).Mark}").Distinct());

    private static string Count(int count, string one, string? many = null) => count == 1 ? $"one {one}" : $"{Number.Print(count, 0)} {many ?? one + "s"}";

    /// <summary>"13 and 14", "4 to 6", "2, 4 to 6 and 9".</summary>
    private static string Ranges(List<int> steps)
    {
        var runs = new List<string>();
        for (var i = 0; i < steps.Count;)
        {
            var j = i;
            while (j + 1 < steps.Count && steps[j + 1] == steps[j] + 1) j++;
            if (j == i + 1) runs.AddRange([Number.Print(steps[i], 0), Number.Print(steps[j], 0)]);
            else runs.Add(i == j ? Number.Print(steps[i], 0) : $"{Number.Print(steps[i], 0)} to {Number.Print(steps[j], 0)}");
            i = j + 1;
        }
        return runs.Count == 1 ? runs[0] : $"{string.Join(", ", runs[..^1])} and {runs[^1]}";
    }
}
