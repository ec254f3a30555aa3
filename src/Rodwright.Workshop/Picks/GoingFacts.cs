using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>What is measured on a step in plan: goings, ends, taper, pitch, and what the regulation says to them.</summary>
internal static class GoingFacts
{
    public static IEnumerable<Fact> Of(PickBench bench, int k) => bench.Plan.Steps[k - 1] switch
    {
        StepKind.Tapered => Tapered(bench, k),
        StepKind.Straight => Straight(bench),
        _ => LandingFacts.Lengths(bench),
    };

    private static IEnumerable<Fact> Straight(PickBench bench)
    {
        yield return Facts.Mm("going", bench.Plan.Going, Why.Field(Why.Going), Why.Going);
        yield return bench.Pitch();
        foreach (var fact in ClauseFacts.At(bench, w => w is "straight steps" or "all steps")) yield return fact;
    }

    private static IEnumerable<Fact> Tapered(PickBench bench, int k)
    {
        var plan = bench.Plan;
        if (plan.Turn is not { } turn || turn.Steps.FirstOrDefault(s => s.Number == k) is not { } step) yield break;
        var (a, b, n) = (plan.Riser(k), plan.Riser(k + 1), turn.Steps.Length);
        yield return Facts.Mm("going on the walking line, straight across", step.GoingChord, Why.Rule(RiserPlaces.Method(turn)), Why.Steps, Between(a.Walking, b.Walking));
        var station = turn.Steps.TakeWhile(s => s.Number < k).Sum(s => s.GoingArc);
        yield return Facts.Mm("going along the walking line", step.GoingArc, Why.Rule("straight where the line is straight, and the arc about the newel's centre"), Why.Steps,
            turn.Method == "equal-arcs" ? WalkingFacts.Turn(bench, turn) / n : Working.Of(step.GoingArc), WalkingFacts.Stretch(bench, turn, station, station + step.GoingArc));
        yield return Facts.Mm("narrow end along the faces", step.NarrowAlongFaces, Why.Rule("along the newel's faces, and the string's beyond; the jog between is not counted"), "practice.newel",
            (Working.Of(plan.Job.Practice.Newel) + turn.FirstRiser + turn.LastRiser) / n, Between(a.Inner, b.Inner), Round(a.Inner, b.Inner));
        yield return Facts.Mm("narrow end straight across", step.NarrowStraight, Why.Rule("corner to corner"), "", Between(a.Inner, b.Inner));
        yield return Facts.Mm("narrow end as width of the tread", step.NarrowTreadWidth, Why.Rule("along the faces, and the nosing"), "practice.nosing", Working.Of(step.NarrowAlongFaces) + plan.Job.Practice.Nosing);
        yield return Facts.Mm("wide end along the wall", step.Wide, Why.Rule("along the wall string's face, and round the corner"), Why.Width, Wide(plan, a, b));
        yield return Facts.Degrees("taper", step.Taper.Degrees, Why.Rule("the angle between its two riser faces"), "", Slope(plan, b) - Slope(plan, a));
        yield return Facts.Mm("from nosing to nosing on the walking line", step.NosingGoing, Why.Rule("reported beside the going on riser faces"));
        if (step.OuterGoing is { } outer) yield return Facts.Mm("going on the outer measuring line", outer, plan.Regulation.Title);
        yield return Facts.Degrees("pitch on the walking line", Angle.OfPitch(plan.Rise, step.GoingChord).Degrees, Why.Rule("the slope of one rise over the going straight across"), "", Working.Atan(Working.Of(plan.Rise) / step.GoingChord));
        foreach (var fact in ClauseFacts.At(bench, w => w == $"step {Number.Print(k, 0)}" || w is "tapered steps" or "all steps")) yield return fact;
    }

    private static Working Between(Point2 a, Point2 b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        return Math.Abs(dx) < 1e-9 ? Working.Of(Math.Abs(dy)) : Math.Abs(dy) < 1e-9 ? Working.Of(Math.Abs(dx)) : Working.Across(dx, dy);
    }

    /// <summary>Along two faces round an arris.</summary>
    private static Working Round(Point2 a, Point2 b) => Working.Of(Math.Abs(b.Y - a.Y)) + Math.Abs(b.X - a.X);

    private static Working Wide(StairPlan plan, RiserLine a, RiserLine b)
    {
        var corner = plan.Outer.Edges[0].To;
        var up = plan.Outer.Edges[0].Along;
        // On the first wall a riser lies before the corner, on the second it lies beyond.
        var (before, after) = ((corner - a.Outer).Dot(up) > 1e-6, (corner - b.Outer).Dot(up) > 1e-6);
        var (da, db) = (corner.DistanceTo(a.Outer), corner.DistanceTo(b.Outer));
        if (db < 1e-6) return da;
        if (da < 1e-6) return db;
        return before && after ? Working.Of(da) - db : before ? Working.Of(da) + db : Working.Of(db) - da;
    }

    /// <summary>A riser's slope off a line square across the lower flight, degrees.</summary>
    private static Working Slope(StairPlan plan, RiserLine riser)
    {
        var d = riser.Outer - riser.Inner;
        var up = plan.Outer.Edges[0].Along;
        var (rise, across) = (d.Dot(up), Math.Abs(d.Cross(up)));
        return across < 1e-6 ? 90 : Math.Abs(rise) < 1e-9 ? 0 : Working.Atan(Working.Of(rise) / across);
    }
}
