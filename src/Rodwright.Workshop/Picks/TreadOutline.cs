using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Tables;

namespace Rodwright.Workshop.Picks;

/// <summary>The outline of a tread or nosing piece, explained.</summary>
internal static class TreadOutline
{
    /// <summary>Each corner from the two datum edges.</summary>
    public static IEnumerable<Fact> Corners(Part part)
    {
        var corners = TreadCorners.Of(part);
        for (var i = 0; i < corners.Length; i++)
            yield return Facts.Words($"corner {TreadCorners.Letter(i)}", $"{Facts.Length(corners[i].X)} along, {Facts.Length(corners[i].Y)} up", Why.Rule("along from the left end of the board, and up from the nosing's edge: the two datum edges"));
    }

    /// <summary>Between the faces and into the housings, where both ends are square.</summary>
    public static Working Length(PickBench bench, Part part) =>
        bench.Kit.Joints.Where(j => j.Male == part.Id && j.Depth > 0).GroupBy(j => j.Female).Select(g => g.First().Depth)
            .Aggregate(Working.Of(bench.Plan.ClearWidth), (sum, depth) => sum + depth);
}
