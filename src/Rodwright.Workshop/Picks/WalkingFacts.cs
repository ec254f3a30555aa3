using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>Lengths along the walking line.</summary>
internal static class WalkingFacts
{
    /// <summary>The whole of it, from the first riser to the last.</summary>
    public static Fact Length(PickBench bench)
    {
        var plan = bench.Plan;
        var ways = plan.Turn is { } turn
            ? Working.Of(bench.Job.Layout.GoingsBefore) * plan.Going + Turn(bench, turn) + Working.Of(bench.Job.Layout.GoingsAfter) * plan.Going
            : Working.Of(plan.Risers - 1) * plan.Going;
        return Facts.Mm("length of the walking line", plan.WalkingLine.Length, Why.Rule("the goings before, the turn, and the goings after"), Why.Going, ways);
    }

    /// <summary>The turn's share of it: an offset, a quarter circle about the newel's centre, an offset.</summary>
    public static Working Turn(PickBench bench, TurnPlan turn) => Working.Of(turn.FirstRiser) + Working.Pi * bench.Plan.WalkingRadius / 2 + turn.LastRiser;

    /// <summary>A stretch of the turn, by stations from its first riser.</summary>
    public static Working Stretch(PickBench bench, TurnPlan turn, double from, double to)
    {
        var r = bench.Plan.WalkingRadius;
        var (start, end) = (turn.FirstRiser, turn.FirstRiser + Math.PI / 2 * r);
        var straight = Math.Max(0, Math.Min(to, start) - from) + Math.Max(0, to - Math.Max(from, end));
        var angle = Angle.FromRadians(Math.Max(0, Math.Min(to, end) - Math.Max(from, start)) / r).Degrees;
        var arc = Working.Pi * r * angle / 180;
        return straight > 1e-6 ? Working.Of(straight) + arc : arc;
    }
}
