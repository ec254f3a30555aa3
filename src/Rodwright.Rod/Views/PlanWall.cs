using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>A stretch of wall behind the strings of one side.</summary>
/// <param name="Face">Its face in plan, directed so that the wall lies to its left.</param>
/// <param name="Id">The wall it belongs to.</param>
/// <param name="StartsFree">Whether the wall goes on past the beginning of the face: a turn's newel stops it, the ends of the stair do not.</param>
/// <param name="EndsFree">Whether it goes on past the end of the face.</param>
public sealed record PlanWall(Path2 Face, string Id, bool StartsFree, bool EndsFree)
{
    /// <summary>The walls of a plan, outer side first: the faces of each side as far as they hang together. A newel parts them, and a side that is open.</summary>
    public static ImmutableArray<PlanWall> Of(StairPlan plan) =>
    [
        .. Chains(plan, plan.Outer, ThingId.WallOuter, plan.OuterThickness, toTheRight: !plan.IsMirrored),
        .. Chains(plan, plan.Inner, ThingId.WallInner, plan.InnerThickness, toTheRight: plan.IsMirrored),
    ];

    private static IEnumerable<PlanWall> Chains(StairPlan plan, Boundary side, string id, double thickness, bool toTheRight)
    {
        var edges = side.Edges.Where(e => e.Length > Tolerance.Same).ToList();
        for (var i = 0; i < edges.Count; i++)
        {
            if (!IsWall(i)) continue;
            var first = i;
            while (i + 1 < edges.Count && IsWall(i + 1)) i++;
            List<Point2> points = [edges[first].From, .. edges[first..(i + 1)].Select(e => e.To)];
            var (atFoot, atHead) = (first == 0, i == edges.Count - 1);
            if (toTheRight) points.Reverse();
            yield return new(PlanView.Offset(points, thickness), id, toTheRight ? atHead : atFoot, toTheRight ? atFoot : atHead);
        }

        // Beside a landing there is a wall without a string; between two newels the landing's edge is open.
        bool IsWall(int i) => edges[i].Kind switch
        {
            BoundaryKind.StringFace => plan.Strings.First(s => s.Id == edges[i].Carrier).IsWall,
            BoundaryKind.WallEnd => true,
            BoundaryKind.Wall => !(IsNewel(i - 1) && IsNewel(i + 1)),
            _ => false,
        };

        bool IsNewel(int i) => i >= 0 && i < edges.Count && edges[i].Kind is BoundaryKind.NewelFace or BoundaryKind.NewelJog;
    }
}
