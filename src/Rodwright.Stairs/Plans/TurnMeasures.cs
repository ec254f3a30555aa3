using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Plans;

/// <summary>Measures the tapered steps of a turn: goings, narrow ends in all three measures, wide ends, taper.</summary>
internal static class TurnMeasures
{
    public static TurnPlan Measure(PlanShape shape, TurnShape turn, ImmutableArray<RiserLine> lines, Boundary near, Boundary far, Regulation regulation)
    {
        var (item, found, frame) = (turn.Turn, turn.Found, turn.Frame);
        var (first, last) = (found.FirstRiser + item.SharedBefore * shape.Job.Going, found.LastRiser + item.SharedAfter * shape.Job.Going);
        var path = WalkingPath.Of(turn.Site, first, last);
        var second = regulation.WalkingLine.SecondInsetFor(shape.ClearWidth, shape.Job.ModelScale) is { } inset
            ? new WalkingPath(turn.Site.InnerFace + inset, first, last, turn.Quarters) : null;
        var steps = ImmutableArray.CreateBuilder<TaperedStep>();
        var (left, right) = turn.Hand == Hand.Left ? (near, far) : (far, near);
        var (leftEdges, rightEdges) = (left.EdgesOf(lines.Select(l => l.Inner)), right.EdgesOf(lines.Select(l => l.Outer)));
        var (nearEdges, farEdges) = turn.Hand == Hand.Left ? (leftEdges, rightEdges) : (rightEdges, leftEdges);
        for (var k = turn.FirstLine - item.SharedBefore; !turn.IsLanding && k < turn.LastLine + item.SharedAfter; k++)
        {
            var (a, b) = (lines[k - 1], lines[k]);
            var (nearA, nearB) = turn.Hand == Hand.Left ? (a.Inner, b.Inner) : (a.Outer, b.Outer);
            var (farA, farB) = turn.Hand == Hand.Left ? (a.Outer, b.Outer) : (a.Inner, b.Inner);
            var along = near.FaceLength(near.StationOn(nearEdges[k - 1], nearA), near.StationOn(nearEdges[k], nearB));
            steps.Add(new(
                k,
                a.Walking.DistanceTo(b.Walking),
                path.StationOf(frame.Local(b.Walking)) - path.StationOf(frame.Local(a.Walking)),
                Nosing(a).DistanceTo(Nosing(b)),
                second is null ? null : OnSecond(second, a).DistanceTo(OnSecond(second, b)),
                along,
                nearA.DistanceTo(nearB),
                along + shape.Job.Practice.Nosing,
                far.FaceLength(far.StationOn(farEdges[k - 1], farA), far.StationOn(farEdges[k], farB)),
                Angle.FromRadians(Math.Abs(Angle.Atan2(a.Up.Cross(b.Up), a.Up.Dot(b.Up))))));
        }
        var ids = new[] { Ids.Turn(shape, turn.Index, last: false), Ids.Turn(shape, turn.Index, last: true) };
        return new(item.Kind, shape.Job.Layout.HandOf(item), turn.Method.Id, found.FirstRiser, found.LastRiser, found.DecidedBy, frame.Centre,
            turn.FirstLine, turn.LastLine, steps.ToImmutable())
        {
            Index = turn.Index, Turn = item, Frame = frame, Site = turn.Site, Newels = [.. ids.Distinct()],
            OuterNewels = shape.HasOuterNewel(turn) ? [.. new[] { Ids.Outer(shape, turn.Index, last: false), Ids.Outer(shape, turn.Index, last: true) }.Distinct()] : [],
        };

        Line2 Outwards(RiserLine line, double offset)
        {
            // Offset down the stair; directed from the newel outwards.
            var (a, b) = (frame.Local(line.Inner - offset * line.Up), frame.Local(line.Outer - offset * line.Up));
            return turn.Hand == Hand.Left ? Line2.Between(a, b) : Line2.Between(b, a);
        }

        Point2 Nosing(RiserLine line) => path.Crossing(Outwards(line, shape.Job.Practice.Nosing)) ?? frame.Local(line.Walking);

        Point2 OnSecond(WalkingPath second, RiserLine line) => second.Crossing(Outwards(line, 0)) ?? frame.Local(turn.Hand == Hand.Left ? line.Outer : line.Inner);
    }
}
