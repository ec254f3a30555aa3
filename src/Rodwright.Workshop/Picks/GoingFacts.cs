using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>What is measured on a step in plan: goings, ends, taper, pitch, and what the regulation says to them.</summary>
internal static class GoingFacts
{
    public static IEnumerable<Fact> Of(PickBench bench, int k) => bench.Plan.Steps[k - 1] switch
    {
        StepKind.Tapered => Tapered(bench, k),
        StepKind.Straight => Straight(bench),
        _ => LandingFacts.Lengths(bench, k),
    };

    private static IEnumerable<Fact> Straight(PickBench bench)
    {
        yield return bench.Mm("going", bench.Plan.Going, Why.Field(Why.Going), Why.Going);
        yield return bench.Pitch();
        foreach (var fact in ClauseFacts.At(bench, w => w is "straight steps" or "all steps")) yield return fact;
    }

    private static IEnumerable<Fact> Tapered(PickBench bench, int k)
    {
        var plan = bench.Plan;
        if (plan.TurnOf(k) is not { } turn || turn.Steps.FirstOrDefault(s => s.Number == k) is not { } step) yield break;
        var (a, b, n) = (plan.Riser(k), plan.Riser(k + 1), turn.Steps.Length);
        var (near, after) = (TurnPlaces.Near(plan, turn, a), TurnPlaces.Near(plan, turn, b));
        yield return bench.Mm("going on the walking line, straight across", step.GoingChord, Why.Rule(RiserPlaces.Method(turn)), Why.Steps, Between(a.Walking, b.Walking));
        var station = turn.Steps.TakeWhile(s => s.Number < k).Sum(s => s.GoingArc);
        yield return bench.Mm("going along the walking line", step.GoingArc, Why.Rule("straight where the line is straight, and the arc about the newel's centre"), Why.Steps,
            turn.Method == "equal-arcs" ? WalkingFacts.Turn(turn) / n : Working.Of(step.GoingArc), WalkingFacts.Stretch(plan, turn, station, station + step.GoingArc));
        yield return bench.Mm("narrow end along the faces", step.NarrowAlongFaces, Why.Rule("along the newel's faces, and the string's beyond; the jog between is not counted"), "practice.newel",
            Narrow(plan, turn) / n, Between(near, after), Round(near, after));
        yield return bench.Mm("narrow end straight across", step.NarrowStraight, Why.Rule("corner to corner"), "", Between(near, after));
        yield return bench.Mm("narrow end as width of the tread", step.NarrowTreadWidth, Why.Rule("along the faces, and the nosing"), "practice.nosing", Working.Of(step.NarrowAlongFaces) + plan.Job.Practice.Nosing);
        yield return bench.Mm("wide end along the wall", step.Wide, Why.Rule("along the wall string's face, and round the corner"), Why.Width, Wide(plan, turn, a, b));
        yield return Facts.Degrees("taper", step.Taper.Degrees, Why.Rule("the angle between its two riser faces"), "", k == TurnPlaces.FirstSquare(turn) ? Slope(plan, turn, b) : Slope(plan, turn, b) - Slope(plan, turn, a), Slope(plan, turn, a) - Slope(plan, turn, b));
        yield return bench.Mm("from nosing to nosing on the walking line", step.NosingGoing, Why.Rule("straight across; reported beside the going on riser faces"), "practice.nosing", TurnPoints.OnNosings(bench, turn, k));
        if (step.OuterGoing is { } outer) yield return bench.Mm("going on the outer measuring line", outer, plan.Regulation.Title, "", TurnPoints.OnOuter(bench, turn, k));
        yield return Facts.Degrees("pitch on the walking line", Angle.OfPitch(plan.Rise, step.GoingChord).Degrees, Why.Rule("the slope of one rise over the going straight across"), "", Working.Atan(Working.Of(plan.Rise) / step.GoingChord));
        foreach (var fact in ClauseFacts.At(bench, w => w == $"step {Number.Print(k, 0)}" || w is "tapered steps" or "all steps")) yield return fact;
    }

    /// <summary>The straight distance of two points.</summary>
    public static Working Between(Point2 a, Point2 b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        return Math.Abs(dx) < 1e-9 ? Working.Of(Math.Abs(dy)) : Math.Abs(dy) < 1e-9 ? Working.Of(Math.Abs(dx)) : Working.Across(dx, dy);
    }

    /// <summary>Along two faces round an arris.</summary>
    private static Working Round(Point2 a, Point2 b) => Working.Of(Math.Abs(b.Y - a.Y)) + Math.Abs(b.X - a.X);

    /// <summary>The narrow line whole: along the newel's faces and the offsets either side.</summary>
    public static Working Narrow(StairPlan plan, TurnPlan turn)
    {
        var newel = Working.Of(plan.Job.Practice.Newel);
        return (turn.Site.Quarters == 1 ? newel : Working.Of(turn.Site.Quarters) * newel) + turn.FirstRiser + turn.LastRiser;
    }

    /// <summary>Along the walls from one riser's far end to another's, round the corners that lie between.</summary>
    public static Working Wide(StairPlan plan, TurnPlan turn, RiserLine a, RiserLine b)
    {
        // Counted from the turn's first corner: on the first wall a riser lies before it, on the next beyond.
        var (o, w) = (turn.Site.OuterFace, turn.Site.Between);
        var (from, to) = (Along(a), Along(b));
        if (Math.Abs(to) < 1e-6) return -from;
        if (Math.Abs(from) < 1e-6) return to;
        return from < 0 && to < 0 ? Working.Of(-from) - -to : from < 0 ? Working.Of(-from) + to : Working.Of(to) - from;

        double Along(RiserLine riser)
        {
            var p = turn.Frame.Local(TurnPlaces.Far(plan, turn, riser));
            if (p.X > 0 && Math.Abs(p.X - o) < 0.01 && p.Y < o + 1e-6) return p.Y - o;
            return turn.Site.Quarters == 2 && p.Y < o - 1e-6 ? 2 * o + w + o - p.Y : o - p.X;
        }
    }

    /// <summary>A riser's slope off a line square across the lower flight, degrees.</summary>
    private static Working Slope(StairPlan plan, TurnPlan turn, RiserLine riser)
    {
        var d = turn.Frame.Local(TurnPlaces.Far(plan, turn, riser)) - turn.Frame.Local(TurnPlaces.Near(plan, turn, riser));
        if (Math.Abs(d.X) < 1e-6) return 90;
        if (Math.Abs(d.Y) < 1e-9) return d.X > 0 ? 0 : 180;
        return d.X > 0 ? Working.Atan(Working.Of(d.Y) / d.X) : Working.Of(180) - Working.Atan(Working.Of(d.Y) / -d.X);
    }
}
