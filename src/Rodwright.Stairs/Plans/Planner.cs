using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Plans;

/// <summary>Sets a job out in plan. Always left-handed; the caller mirrors the result once for a right-hand stair.</summary>
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
        var half = job.Practice.Newel / 2;
        var inset = regulation.WalkingLine.InsetFor(clear, job.ModelScale);
        var room = PlanRoom.Check(job, clear, inset, inner);
        if (!room.IsEmpty) return Outcome<StairPlan>.Refused(PlanRoom.Advised(job, regulation, room, telling));

        var site = new TurnSite(half, inner / 2, inner / 2 + clear, inner / 2 + inset);
        var findings = new List<Finding>();
        var shape = new PlanShape
        {
            Job = job,
            Before = job.Layout.GoingsBefore,
            After = job.Layout.GoingsAfter,
            Site = site,
            FirstRiser = 0,
            LastRiser = 0,
            InnerThickness = inner,
            OuterThickness = outer,
        };
        TurnMethod? method = null;
        TurnSolver.Found? found = null;
        if (job.Layout.Turn is { } turn)
        {
            method = turn.Kind == TurnKind.Landing ? QuarterLanding.Instance : TurnCatalogue.Find(turn.Method)!;
            found = turn.Kind == TurnKind.Landing
                ? new(turn.FirstRiser ?? 0, turn.LastRiser ?? 0, TurnSolver.Decided(turn, "riser faces on the newel's centre"), true, 0, 0)
                : TurnSolver.Solve(site, method, turn, Wanted(job, regulation), regulation.Going, job.Practice.Cover);
            if (!found.Fits) findings.Add(TurnRemedies.NothingFits(job, regulation, site, turn, found, telling));
            shape = shape with { FirstRiser = found.FirstRiser, LastRiser = found.LastRiser };
        }

        var fit = PlanRoom.CheckNewels(shape);
        if (!fit.IsEmpty) return Outcome<StairPlan>.Refused(PlanRoom.Advised(job, regulation, fit, telling));
        var (innerBoundary, outerBoundary) = (Boundaries.Inner(shape), Boundaries.Outer(shape));
        var lines = Risers(shape, method);
        var path = Walking(shape);
        return Outcome<StairPlan>.Of(
            new StairPlan
            {
                Job = job,
                Regulation = regulation,
                RiserLines = lines,
                Steps = Kinds(shape),
                Inner = innerBoundary,
                Outer = outerBoundary,
                WalkingLine = path,
                WalkingRadius = site.Walking,
                Turn = found is null ? null : TurnMeasures.Measure(shape, method!, found, lines, innerBoundary, outerBoundary, regulation),
                Newels = Sites.Newels(shape),
                Strings = Sites.Strings(shape),
                ClearWidth = clear,
                InnerThickness = inner,
                OuterThickness = outer,
            },
            findings);
    }

    /// <summary>What the tapered steps of a job must keep under a regulation, at the job's model scale.</summary>
    internal static TurnSolver.Wanted Wanted(Job job, Regulation regulation) => new(
        Math.Max(regulation.TaperedAtLeastStraight ? job.Going : 0, regulation.LeastGoing * job.ModelScale),
        regulation.LeastNarrow * job.ModelScale);

    private static ImmutableArray<RiserLine> Risers(PlanShape shape, TurnMethod? method)
    {
        var site = shape.Site;
        var lines = ImmutableArray.CreateBuilder<RiserLine>();
        var straight = shape.HasTurn ? shape.Before : shape.Before + 1;
        for (var k = 1; k <= straight; k++)
        {
            var y = (k - 1) * shape.Job.Going;
            lines.Add(new(k, new(InnerX(y), y), new(site.Walking, y), new(OuterX(y), y), new(0, 1)));
        }
        if (method is null) return lines.ToImmutable();
        var centre = shape.Centre - Point2.Origin;
        foreach (var line in method.Lines(site, shape.FirstRiser, shape.LastRiser, shape.Job.Layout.Turn!.Steps))
            lines.Add(new(lines.Count + 1, line.Inner + centre, line.Walking + centre, line.Outer + centre, (line.Outer - line.Inner).Unit.Left));
        for (var k = 1; k <= shape.After; k++)
        {
            var x = -(shape.LastRiser + k * shape.Job.Going);
            lines.Add(new(lines.Count + 1, new Point2(x, InnerX(x - shape.LastFace)) + centre, new Point2(x, site.Walking) + centre,
                new Point2(x, site.OuterFace) + centre, new(-1, 0)));
        }
        return lines.ToImmutable();

        // On an open side the first and last risers end on their newels' faces, all others on the string's.
        double InnerX(double fromEnd) => shape.Job.InnerSide == SideKind.Open &&
            (Math.Abs(fromEnd) < Tolerance.Same || (!shape.HasTurn && Math.Abs(fromEnd - shape.LastFace) < Tolerance.Same))
            ? shape.HalfNewel : site.InnerFace;

        double OuterX(double y) => !shape.HasTurn && shape.Job.OuterSide == SideKind.Open && (y == 0 || Tolerance.IsSame(y, shape.LastFace))
            ? site.OuterFace + shape.OuterThickness / 2 - shape.HalfNewel : site.OuterFace;
    }

    private static Path2 Walking(PlanShape shape)
    {
        var r = shape.Site.Walking;
        if (!shape.HasTurn) return Path2.Polyline(new Point2(r, 0), new Point2(r, shape.LastFace));
        var c = shape.Centre;
        // A quarter circle, anticlockwise: bulge tan(90/4 degrees).
        return new([new(new(r, 0)), new(new(r, c.Y), Angle.Tan(Math.PI / 8)), new(new(0, c.Y + r)), new(new(shape.LastFace, c.Y + r))], false);
    }

    private static ImmutableArray<StepKind> Kinds(PlanShape shape)
    {
        var kinds = shape.Job.Layout.Sequence.SelectMany(item => Enumerable.Repeat(
            item is Turn turn ? turn.Kind == TurnKind.Landing ? StepKind.Landing : StepKind.Tapered : StepKind.Straight, item.Steps));
        return [.. kinds, StepKind.Floor];
    }
}
