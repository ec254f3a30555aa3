using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Headroom;

/// <summary>The surfaces of a stair that headroom is measured from: the floor before it, every step and landing, and the upper floor behind it.</summary>
public static class WalkedSurfaces
{
    /// <summary>From the foot up. The floors at both ends are taken as deep as the stair is wide, or to the wall behind.</summary>
    /// <param name="plan">The stair.</param>
    /// <param name="footDepth">Depth of floor before the first nosing, mm.</param>
    public static ImmutableArray<WalkedSurface> Of(StairPlan plan, double footDepth)
    {
        var nosings = plan.RiserLines.Select(r => NosingMeet.Of(plan, r)).ToImmutableArray();
        var surfaces = ImmutableArray.CreateBuilder<WalkedSurface>();
        var first = nosings[0];
        if (footDepth > 1) surfaces.Add(Floor(0, 0, Behind(first, -footDepth), [first.Inner, first.Outer]));
        for (var k = 1; k < plan.Risers; k++) surfaces.Add(Between(plan, k, nosings[k - 1], nosings[k]));
        var last = nosings[^1];
        surfaces.Add(Floor(plan.Risers, plan.Risers * plan.Rise, [last.Inner, last.Outer], Behind(last, plan.ClearWidth)));
        return surfaces.ToImmutable();
    }

    private static Point2[] Behind(NosingMeet nosing, double by) => [nosing.Inner + by * nosing.Up, nosing.Outer + by * nosing.Up];

    private static WalkedSurface Floor(int step, double height, Point2[] near, Point2[] far) => new()
    {
        Step = step, Low = height, High = height, MiddleFrom = near[0].Towards(near[1], 0.5), MiddleTo = far[0].Towards(far[1], 0.5),
        Front = Line2.Between(near[0], near[1]), Ring = [.. Ring.Anticlockwise([near[0], near[1], far[1], far[0]])],
    };

    private static WalkedSurface Between(StairPlan plan, int k, NosingMeet low, NosingMeet high)
    {
        var height = k * plan.Rise;
        var landing = plan.Steps[k - 1] == StepKind.Landing;
        var front = new Line2(low.Inner, low.Up.Right);
        var surface = new WalkedSurface
        {
            Step = k, Low = height, High = landing ? height : height + plan.Rise, Ring = Outline(plan, low, high), Front = front,
            MiddleFrom = low.Inner.Towards(low.Outer, 0.5), MiddleTo = high.Inner.Towards(high.Outer, 0.5),
        };
        if (landing) return surface;
        var turn = Angle.Atan2(low.Up.Cross(high.Up), low.Up.Dot(high.Up));
        return Math.Abs(turn) > 1e-9 && front.Cross(new(high.Inner, high.Up.Right)) is { } apex
            ? surface with { Apex = apex, Turn = turn }
            : surface with { Depth = (high.Inner - low.Inner).Dot(low.Up) };
    }

    /// <summary>Between two nosings and the two boundaries; where a boundary would make it cross itself, the four corners alone.</summary>
    private static ImmutableArray<Point2> Outline(StairPlan plan, NosingMeet low, NosingMeet high)
    {
        List<Point2> ring =
        [
            low.Inner, .. Corners(plan.Inner, low.InnerStation, high.InnerStation), high.Inner,
            high.Outer, .. Corners(plan.Outer, low.OuterStation, high.OuterStation).Reverse(), low.Outer,
        ];
        return [.. Ring.Anticlockwise(ring)];
    }

    private static IEnumerable<Point2> Corners(Boundary side, double from, double to) => Enumerable.Range(1, side.Edges.Length - 1)
        .Where(i => side.StartOf(i) > from + Tolerance.Same && side.StartOf(i) < to - Tolerance.Same).Select(i => side.Edges[i].From);
}
