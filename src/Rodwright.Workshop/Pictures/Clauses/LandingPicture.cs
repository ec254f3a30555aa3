using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The length of a landing along a wall string's face, from a riser face to the corner.</summary>
internal static class LandingPicture
{
    private const double In = 7; // from the wall string, mm of paper

    /// <summary>The landing and the way in or out that words speak of: "landing, way in", "landing of turn 2, way out"; null for others.</summary>
    public static (TurnPlan Turn, bool WayIn)? Of(StairPlan plan, string where)
    {
        var comma = where.IndexOf(", way ", StringComparison.Ordinal);
        if (comma < 0 || !where.StartsWith("landing", StringComparison.Ordinal)) return null;
        var turn = Places.Number(where[..comma], "landing of turn") is { } number
            ? plan.Turns.FirstOrDefault(t => t.Index == number - 1)
            : plan.Turns.FirstOrDefault(t => t.Steps.IsEmpty);
        return turn is null ? null : (turn, where.EndsWith("in", StringComparison.Ordinal));
    }

    public static Sketch Draw(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var (turn, wayIn) = Of(plan, check.Where) ?? (plan.Turns.First(t => t.Steps.IsEmpty), true);
        var (first, last) = (plan.Riser(turn.FirstLine), plan.Riser(turn.LastLine));
        var far = TurnPlaces.Far(plan, turn, wayIn ? first : last);
        var corners = TurnPlaces.Corners(turn);
        var corner = wayIn ? corners[0] : corners[^1];
        var box = Box2.Of([.. corners, first.Outer, last.Outer, first.Inner, last.Inner, turn.Centre]);
        var sketch = new Sketch(box, 6, 5, 6, 5) { Units = plan.Units };
        PlanGround.Draw(sketch, view, turn.FirstLine);
        // To the side where the landing lies.
        var inwards = Line2.Between(far, corner).LeftOf(turn.Centre) > 0 ? 1 : -1;
        sketch.Span(far, corner, inwards * In);
        return sketch;
    }
}
