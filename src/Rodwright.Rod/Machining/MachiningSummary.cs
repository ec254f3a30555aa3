using Rodwright.Geometry;
using Rodwright.Rod.Packs;
using Rodwright.Rod.Templates;

namespace Rodwright.Rod.Machining;

/// <summary>What a pack holds for machine and router, in a few lines.</summary>
public static class MachiningSummary
{
    /// <summary>The lines, in bench words.</summary>
    /// <param name="rod">What was drawn.</param>
    /// <param name="pack">The pack drawn of it.</param>
    public static IEnumerable<string> Of(RodJob rod, Pack pack)
    {
        var left = pack.Left.Values.SelectMany(l => l).ToList();
        var (square, narrow) = (left.Count(l => l.Kind == LeftKind.Square), left.Count(l => l.Kind == LeftKind.Narrow));
        yield return $"Cutter {rod.Units.With(rod.Router.Cutter)}: {Number.Print(square, 0)} corners to square by hand{(narrow > 0 ? $", {Number.Print(narrow, 0)} places it does not go into" : "")}{(left.Count(l => l.Kind == LeftKind.NotFollowed) is var doubtful && doubtful > 0 ? $", {Number.Print(doubtful, 0)} to look at before cutting" : "")}; see machining.csv.";
        var pairs = pack.Parts.Where(p => p.Name.StartsWith("pair-", StringComparison.Ordinal)).Select(p => "dxf/" + p.Name).ToList();
        if (pairs.Count > 0) yield return "Strings in pairs: " + string.Join(", ", pairs);
        var jigs = pack.Parts.Where(p => p.Name.StartsWith("jig-", StringComparison.Ordinal)).Select(p => "dxf/" + p.Name).ToList();
        if (jigs.Count > 0) yield return $"Router jigs, bush {rod.Units.With(rod.Router.Bush)} and cutter {rod.Units.With(rod.Router.HandCutter)}, openings {rod.Units.With(rod.Router.Offset)} outside the housings: {string.Join(", ", jigs)}";
        foreach (var missing in Jigs.Missing(rod)) yield return char.ToUpperInvariant(missing[0]) + missing[1..] + ".";
    }
}
