using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Headroom;

/// <summary>Where a nosing's edge meets both boundaries.</summary>
/// <param name="Inner">On the inner boundary.</param>
/// <param name="InnerStation">Its station there.</param>
/// <param name="Outer">On the outer boundary.</param>
/// <param name="OuterStation">Its station there.</param>
/// <param name="Up">Unit direction square to it, up the stair.</param>
internal sealed record NosingMeet(Point2 Inner, double InnerStation, Point2 Outer, double OuterStation, Vector2 Up)
{
    public static NosingMeet Of(StairPlan plan, RiserLine riser)
    {
        var front = new Line2(riser.Inner - plan.Job.Practice.Nosing * riser.Up, riser.Outer - riser.Inner);
        var (inner, outer) = (On(plan.Inner, front, riser.Inner), On(plan.Outer, front, riser.Outer));
        return new(inner.At, inner.Station, outer.At, outer.Station, riser.Up);
    }

    /// <summary>The crossing nearest to the riser's own end; the end itself moved forward where the line misses the boundary.</summary>
    private static (Point2 At, double Station) On(Boundary side, Line2 front, Point2 riser)
    {
        var wanted = front.At(front.Station(riser));
        double? best = null;
        foreach (var station in side.Crossings(front))
            if (best is not { } so || side.At(station).DistanceTo(wanted) < side.At(so).DistanceTo(wanted)) best = station;
        return best is { } found && side.At(found).DistanceTo(wanted) < 400 ? (side.At(found), found) : (wanted, Nearest(side, wanted));
    }

    private static double Nearest(Boundary side, Point2 p)
    {
        var (best, station) = (double.PositiveInfinity, 0.0);
        for (var i = 0; i < side.Edges.Length; i++)
        {
            var edge = side.Edges[i];
            if (edge.Length <= Tolerance.Same) continue;
            var along = Math.Clamp((p - edge.From).Dot(edge.Along), 0, edge.Length);
            var off = p.DistanceTo(edge.From + along * edge.Along);
            if (off < best) (best, station) = (off, side.StartOf(i) + along);
        }
        return station;
    }
}
