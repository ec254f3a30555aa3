using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Pictures;

/// <summary>Walks along one side of a plan from riser to riser.</summary>
internal static class BoundaryWalk
{
    /// <summary>The straight pieces between two points of a boundary, in climbing order; its first and last edges reach on beyond their ends.</summary>
    public static IReadOnlyList<(Point2 From, Point2 To, BoundaryKind Kind)> Between(Boundary boundary, Point2 from, Point2 to)
    {
        var (first, last) = (EdgeOf(boundary, from), EdgeOf(boundary, to));
        var pieces = new List<(Point2, Point2, BoundaryKind)>();
        for (var i = first; i <= last; i++)
        {
            var (a, b) = (i == first ? from : boundary.Edges[i].From, i == last ? to : boundary.Edges[i].To);
            if (a.DistanceTo(b) > 1e-6) pieces.Add((a, b, boundary.Edges[i].Kind));
        }
        return pieces;
    }

    /// <summary>What a step covers in plan, between its riser's face and the next one's.</summary>
    public static Path2 Step(StairPlan plan, int step)
    {
        var (a, b) = (plan.Riser(step), plan.Riser(step + 1));
        var points = new List<Point2> { a.Inner };
        points.AddRange(Between(plan.Outer, a.Outer, b.Outer).Select(p => p.From));
        points.Add(b.Outer);
        points.AddRange(Between(plan.Inner, a.Inner, b.Inner).Select(p => p.To).Reverse());
        return Path2.Polygon(points);
    }

    private static int EdgeOf(Boundary boundary, Point2 p)
    {
        var (best, edge) = (double.PositiveInfinity, 0);
        for (var i = 0; i < boundary.Edges.Length; i++)
        {
            var e = boundary.Edges[i];
            if (e.Length <= Tolerance.Same) continue;
            var along = e.Along.Dot(p - e.From);
            var held = Math.Clamp(along, i == 0 ? double.NegativeInfinity : 0, i == boundary.Edges.Length - 1 ? double.PositiveInfinity : e.Length);
            var off = p.DistanceTo(e.From + held * e.Along);
            if (off < best - 1e-6) (best, edge) = (off, i);
        }
        return edge;
    }
}
