using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Plans;

/// <summary>Measures the tapered steps of a turn: goings, narrow ends in all three measures, wide ends, taper.</summary>
internal static class TurnMeasures
{
    public static TurnPlan Measure(
        PlanShape shape, TurnMethod method, TurnSolver.Found found, ImmutableArray<RiserLine> lines, Boundary inner, Boundary outer, Regulation regulation)
    {
        var turn = shape.Job.Layout.Turn!;
        var path = new WalkingPath(shape.Site.Walking, found.FirstRiser, found.LastRiser);
        var second = regulation.WalkingLine.SecondInsetFor(shape.ClearWidth, shape.Job.ModelScale) is { } inset
            ? new WalkingPath(shape.Site.InnerFace + inset, found.FirstRiser, found.LastRiser) : null;
        var toTurn = Point2.Origin - shape.Centre;
        var steps = ImmutableArray.CreateBuilder<TaperedStep>();
        for (var k = shape.TurnRiser; turn.Kind == TurnKind.Winders && k < shape.TurnEnd; k++)
        {
            var (a, b) = (lines[k - 1], lines[k]);
            var along = inner.FaceLength(StationOn(inner, a.Inner), StationOn(inner, b.Inner));
            steps.Add(new(
                k,
                a.Walking.DistanceTo(b.Walking),
                path.StationOf(b.Walking + toTurn) - path.StationOf(a.Walking + toTurn),
                Nosing(a).DistanceTo(Nosing(b)),
                second is null ? null : OnSecond(second, a, toTurn).DistanceTo(OnSecond(second, b, toTurn)),
                along,
                a.Inner.DistanceTo(b.Inner),
                along + shape.Job.Practice.Nosing,
                StationOn(outer, b.Outer) - StationOn(outer, a.Outer),
                Angle.FromRadians(Angle.Atan2(a.Up.Cross(b.Up), a.Up.Dot(b.Up)))));
        }
        return new(turn.Kind, shape.Job.Layout.Hand, method.Id, found.FirstRiser, found.LastRiser, found.DecidedBy, shape.Centre,
            shape.TurnRiser, shape.TurnEnd, steps.ToImmutable());

        Point2 Nosing(RiserLine line) =>
            path.Crossing(Line2.Between(line.Inner + toTurn, line.Outer + toTurn).OffsetLeft(-shape.Job.Practice.Nosing)) ?? line.Walking + toTurn;
    }

    private static Point2 OnSecond(WalkingPath second, RiserLine line, Vector2 toTurn) =>
        second.Crossing(Line2.Between(line.Inner + toTurn, line.Outer + toTurn)) ?? line.Outer + toTurn;

    /// <summary>The station of a point known to lie on the boundary.</summary>
    private static double StationOn(Boundary boundary, Point2 p)
    {
        var (best, station) = (double.PositiveInfinity, 0.0);
        for (var i = 0; i < boundary.Edges.Length; i++)
        {
            var edge = boundary.Edges[i];
            if (edge.Length <= Tolerance.Same) continue;
            var along = (p - edge.From).Dot(edge.Along);
            var held = i == 0 ? Math.Min(along, edge.Length) : i == boundary.Edges.Length - 1 ? Math.Max(along, 0) : Math.Clamp(along, 0, edge.Length);
            var off = p.DistanceTo(edge.From + held * edge.Along);
            if (off < best - Tolerance.Same) (best, station) = (off, boundary.StartOf(i) + held);
        }
        return station;
    }
}
