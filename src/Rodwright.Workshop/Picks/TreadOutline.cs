using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Tables;

namespace Rodwright.Workshop.Picks;

/// <summary>The outline of a tread or nosing piece, explained.</summary>
internal static class TreadOutline
{
    /// <summary>Each corner from the two datum edges.</summary>
    public static IEnumerable<Fact> Corners(PickBench bench, Part part)
    {
        var corners = TreadCorners.Of(part);
        for (var i = 0; i < corners.Length; i++)
            yield return Facts.Words($"corner {TreadCorners.Letter(i)}", $"{bench.Length(corners[i].X)} along, {bench.Length(corners[i].Y)} up", Why.Rule("along from the left end of the board, and up from the nosing's edge: the two datum edges"));
    }

    /// <summary>Ways a board's length may come about where both ends are square: between strings' faces, or a newel's that stands proud of its string.</summary>
    public static IEnumerable<Working> Length(PickBench bench, Part part)
    {
        var (clear, practice) = (Working.Of(bench.Plan.ClearWidth), bench.Practice);
        yield return bench.Kit.Joints.Where(j => j.Male == part.Id && j.Depth > 0).Aggregate(clear, (sum, j) => sum + j.Depth);
        yield return clear + practice.Housing + practice.Housing;
        foreach (var thick in new[] { bench.Plan.InnerThickness, bench.Plan.OuterThickness })
        {
            var proud = (practice.Newel - thick) / 2;
            yield return clear - proud + practice.NewelHousing + practice.Housing;
            yield return clear - proud + practice.NewelHousing - proud + practice.NewelHousing;
            yield return clear - proud + practice.NewelHousing;
        }
        yield return clear + practice.Housing;
    }

    /// <summary>From its lowest corner to its highest.</summary>
    public static Working Deep(Part part)
    {
        var up = TreadCorners.Of(part).Select(c => c.Y).ToList();
        return Working.Of(up.Max()) - up.Min();
    }
}
