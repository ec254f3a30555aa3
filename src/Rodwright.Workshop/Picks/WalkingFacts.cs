using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>Lengths along the walking line.</summary>
internal static class WalkingFacts
{
    /// <summary>The whole of it, from the first riser to the last.</summary>
    public static Fact Length(PickBench bench)
    {
        var plan = bench.Plan;
        var ways = plan.Turns.IsEmpty ? Working.Of(plan.Risers - 1) * plan.Going : Working.Of(plan.Flights[0].Goings) * plan.Going + plan.Turns[0].FirstRiser;
        foreach (var turn in plan.Turns)
        {
            var run = Working.Of(plan.Flights[turn.Index + 1].Goings) * plan.Going;
            var next = turn.Index + 1 < plan.Turns.Length ? plan.Turns[turn.Index + 1] : null;
            // Between turns to both hands the line changes over from one side to the other.
            var over = next is null ? 0 : Over(plan, turn, next);
            ways = ways + Arc(turn);
            ways = Math.Abs(over) > 1e-6
                ? ways + Working.Root(Working.Square(Working.Of(turn.LastRiser) + run + next!.FirstRiser) + Working.Square(Math.Abs(over)))
                : next is null ? ways + turn.LastRiser + run : ways + turn.LastRiser + run + next.FirstRiser;
        }
        return bench.Mm("length of the walking line", plan.WalkingLine.Length, Why.Rule(plan.Turns.Length > 1 ? "the goings of every flight, and the turns between" : "the goings before, the turn, and the goings after"), Why.Going, ways);
    }

    /// <summary>The turn's share of it: an offset, a quarter or half circle about the newel's centre, an offset.</summary>
    public static Working Turn(TurnPlan turn) => Working.Of(turn.FirstRiser) + Arc(turn) + turn.LastRiser;

    private static Working Arc(TurnPlan turn)
    {
        var arc = Working.Pi * turn.WalkingRadius;
        if (turn.Site.Quarters == 1) arc = arc / 2;
        return turn.Site.Between > 0 ? arc + turn.Site.Between : arc;
    }

    /// <summary>How far apart the line lies, across the flight, where one turn leaves it and the next takes it up.</summary>
    private static double Over(StairPlan plan, TurnPlan turn, TurnPlan next)
    {
        if (turn.Frame.Hand == next.Frame.Hand) return 0;
        var across = plan.Flights[next.Index].Along.Left;
        return Math.Abs((TurnPlaces.Newel(next, false) - TurnPlaces.Newel(turn, true)).Dot(across)) - turn.WalkingRadius - next.WalkingRadius;
    }

    /// <summary>A stretch of the turn, by stations from its first square riser.</summary>
    public static Working Stretch(StairPlan plan, TurnPlan turn, double from, double to)
    {
        var r = turn.WalkingRadius;
        var start = turn.FirstRiser + (turn.FirstLine - TurnPlaces.FirstSquare(turn)) * plan.Going;
        var end = start + turn.Site.Quarters * Math.PI / 2 * r;
        var straight = Math.Max(0, Math.Min(to, start) - from) + Math.Max(0, to - Math.Max(from, end));
        var angle = Angle.FromRadians(Math.Max(0, Math.Min(to, end) - Math.Max(from, start)) / r).Degrees;
        // Beside the arc, by the distances to where it begins or ends.
        if (angle < 1e-9) return to <= start ? Working.Of(start - from) - (start - to) : Working.Of(to - end) - (from - end);
        var arc = Working.Pi * r * Working.Ratio(angle) / 180;
        return straight > 1e-6 ? Working.Of(straight) + arc : arc;
    }
}
