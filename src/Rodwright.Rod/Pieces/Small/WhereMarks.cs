using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Pieces.Small;

/// <summary>Where small pieces of one shape go, in words: by the marks and numbers of what they hold.</summary>
internal static class WhereMarks
{
    /// <summary>In words: "W1 under treads 1-3, 8"; "N1 4, N2 2"; empty for pieces that hold nothing.</summary>
    public static string Of(Kit kit, IReadOnlyList<Part> parts) => parts[0].Kind switch
    {
        PartKind.Wedge => Wedges(kit, parts),
        PartKind.GlueBlock => Blocks(parts),
        PartKind.CarriageBracket => string.Join("; ", By(kit, parts, JointKind.BracketToCarriage).Select(g => $"{g.Mark} under {Steps("tread", g.Parts.Select(p => StepOf(kit, p)))}")),
        PartKind.Peg => string.Join(", ", By(kit, parts, JointKind.PegInBore).Select(g => $"{Number.Print(g.Parts.Count, 0)} in {g.Mark}")),
        PartKind.Bracket => string.Join(", ", By(kit, parts, JointKind.BracketToRail).Select(g => $"{Number.Print(g.Parts.Count, 0)} under {g.Mark}")),
        _ => "",
    };

    private static string Wedges(Kit kit, IReadOnlyList<Part> parts) => string.Join("; ", By(kit, parts, JointKind.WedgeDriven).Select(g =>
    {
        var treads = g.Parts.Where(IsOfTread).Select(p => p.Step).ToList();
        var risers = g.Parts.Where(p => !IsOfTread(p)).Select(p => p.Step).ToList();
        return $"{g.Mark} {string.Join(" and ", new[] { treads.Count > 0 ? "under " + Steps("tread", treads) : "", risers.Count > 0 ? "behind " + Steps("riser", risers) : "" }.Where(w => w.Length > 0))}";
    }));

    private static bool IsOfTread(Part wedge) => wedge.Mark[0] == 'T';

    private static string Blocks(IReadOnlyList<Part> parts) => string.Join("; ", parts.GroupBy(p => p.Step).GroupBy(s => s.Count(), s => s.Key)
        .Select(g => $"{Number.Print(g.Key, 0)} under {(g.Count() == 1 ? "" : "each of ")}{Steps("tread", g)}"));

    /// <summary>The step of a carriage's bracket: that of the tread it is tight under.</summary>
    private static int StepOf(Kit kit, Part bracket) => kit.Find(kit.Joints.First(j => j.Kind == JointKind.BracketUnderTread && j.Male == bracket.Id).Female).Step;

    private static IEnumerable<(string Mark, List<Part> Parts)> By(Kit kit, IReadOnlyList<Part> parts, JointKind kind)
    {
        var into = kit.Joints.Where(j => j.Kind == kind).ToDictionary(j => j.Male, j => j.Female);
        return parts.Where(p => into.ContainsKey(p.Id)).GroupBy(p => into[p.Id]).Select(g => (kit.Find(g.Key).Mark, g.ToList()));
    }

    /// <summary>"tread 4", "treads 1-3, 8".</summary>
    internal static string Steps(string word, IEnumerable<int> steps)
    {
        var own = steps.Distinct().ToList();
        return $"{word}{(own.Count == 1 ? "" : "s")} {ShortMarks.Joined(own.Select(n => Number.Print(n, 0)))}";
    }
}
