using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Plans;

/// <summary>Sets a job out in plan. Always as if the job's hand were left; the caller mirrors the result once for a right-hand stair.</summary>
public static class Planner
{
    /// <summary>
    /// The plan of a job, or the reasons why there is none. Breaches found while setting out (no offset that fits) are findings on a plan that exists.
    /// </summary>
    public static Outcome<StairPlan> SetOut(Job job, Regulation regulation) => SetOut(job, regulation, Telling.Words);

    /// <summary>The plan as <see cref="SetOut(Job, Regulation)"/> makes it, its findings without hints: to follow a drag, and to try remedies.</summary>
    public static Outcome<StairPlan> Draft(Job job, Regulation regulation) => SetOut(job, regulation, Telling.Bare);

    /// <summary>The plan as <see cref="SetOut(Job, Regulation)"/> makes it, its findings of one code with remedies that were tried in plan.</summary>
    public static Outcome<StairPlan> Advise(Job job, Regulation regulation, string code) => SetOut(job, regulation, Telling.RemediesFor(code));

    private static Outcome<StairPlan> SetOut(Job job, Regulation regulation, Telling telling)
    {
        var inner = PlanShape.Thickness(job, job.InnerSide);
        var outer = PlanShape.Thickness(job, job.OuterSide);
        var clear = job.Width - inner - outer;
        var inset = regulation.WalkingLine.InsetFor(clear, job.ModelScale);
        var course = Course.Of(job.Layout);
        var room = PlanRoom.Check(job, course, clear, inset, inner);
        if (!room.IsEmpty) return Outcome<StairPlan>.Refused(PlanRoom.Advised(job, regulation, room, telling));

        var tight = new List<TurnShape>();
        var shape = PlanShapes.Of(job, regulation, course, inset, tight);
        var findings = tight.Select(t => TurnRemedies.NothingFits(job, regulation, t.Index, t.Site, t.Turn, t.Found, telling)).ToList();
        var fit = PlanRoom.CheckNewels(shape);
        if (!fit.IsEmpty) return Outcome<StairPlan>.Refused(PlanRoom.Advised(job, regulation, fit, telling));

        var (left, right) = Runs.Of(shape);
        var (innerBoundary, outerBoundary) = (Boundaries.Of(shape, Hand.Left, left), Boundaries.Of(shape, Hand.Right, right));
        var lines = RiserLines.Of(shape);
        return Outcome<StairPlan>.Of(
            new StairPlan
            {
                Job = job,
                Regulation = regulation,
                RiserLines = lines,
                Steps = Kinds(shape),
                Inner = innerBoundary,
                Outer = outerBoundary,
                WalkingLine = Walking(shape),
                WalkingRadius = inner / 2 + inset,
                Flights = [.. shape.Legs.Select(leg => new FlightPlan(leg.Index, leg.Goings, leg.FirstRiser, leg.LastRiser, leg.Along))],
                Turns = [.. shape.Turns.Select(t => TurnMeasures.Measure(shape, t, lines, t.Hand == Hand.Left ? innerBoundary : outerBoundary,
                    t.Hand == Hand.Left ? outerBoundary : innerBoundary, regulation))],
                Newels = Sites.Newels(shape),
                Strings = Sites.Strings(shape, left, right),
                RoundedEnds = [.. new[] { RoundedEnd.At(shape, Hand.Left), RoundedEnd.At(shape, Hand.Right) }.OfType<RoundedEnd>()],
                ClearWidth = clear,
                InnerThickness = inner,
                OuterThickness = outer,
            },
            findings);
    }

    /// <summary>What the tapered steps of a job must keep under a regulation, at the job's model scale.</summary>
    internal static TurnSolver.Wanted Wanted(Job job, Regulation regulation) => new(
        Math.Max(regulation.TaperedAtLeastStraight ? job.Going : 0, regulation.LeastGoing * job.ModelScale),
        regulation.LeastNarrow * job.ModelScale) { Units = job.Units };

    private static Path2 Walking(PlanShape shape)
    {
        var vertices = new List<Vertex2> { new(shape.Legs[0].At(shape.WalkingX(0), 0)) };
        foreach (var turn in shape.Turns)
        {
            var (r, w) = (turn.Site.Walking, turn.Between);
            // A quarter circle has the bulge tan(90/4 degrees), a half one 1; anticlockwise is positive.
            var sign = turn.Hand == Hand.Left ? 1 : -1;
            var quarter = sign * Angle.Tan(Math.PI / 8);
            if (turn.Quarters == 1) Add((new(r, 0), quarter), (new(0, r), 0));
            else if (w == 0) Add((new(r, 0), sign), (new(-r, 0), 0));
            else Add((new(r, 0), quarter), (new(0, r), 0), (new(-w, r), quarter), (new(-w - r, 0), 0));

            void Add(params (Point2 At, double Bulge)[] points) => vertices.AddRange(points.Select(p => new Vertex2(turn.Frame.World(p.At), p.Bulge)));
        }
        var last = shape.Legs[^1];
        vertices.Add(new(last.At(shape.WalkingX(last.Index), last.End)));
        return new(vertices, false);
    }

    private static ImmutableArray<StepKind> Kinds(PlanShape shape)
    {
        var kinds = new StepKind[shape.Risers];
        kinds[^1] = StepKind.Floor;
        foreach (var turn in shape.Turns)
        {
            var (before, after) = turn.IsLanding ? (0, 0) : (turn.Turn.SharedBefore, turn.Turn.SharedAfter);
            for (var k = turn.FirstLine - before; k < turn.LastLine + after; k++) kinds[k - 1] = turn.IsLanding ? StepKind.Landing : StepKind.Tapered;
        }
        return [.. kinds];
    }
}
