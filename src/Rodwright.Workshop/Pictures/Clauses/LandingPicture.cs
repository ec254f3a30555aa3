using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The length of a landing along a wall string's face, from a riser face to the corner.</summary>
internal static class LandingPicture
{
    private const double In = 7; // from the wall string, mm of paper

    public static Sketch Draw(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var turn = plan.Turn!;
        var wayIn = check.Where == "landing, way in";
        var riser = plan.Riser(wayIn ? turn.FirstLine : turn.LastLine);
        var corner = plan.Outer.Edges[0].To;
        var box = Box2.Of([corner, plan.Riser(turn.FirstLine).Outer, plan.Riser(turn.LastLine).Outer, plan.Riser(turn.FirstLine).Inner, plan.Riser(turn.LastLine).Inner, turn.Centre]);
        var sketch = new Sketch(box, 6, 5, 6, 5);
        PlanGround.Draw(sketch, view, turn.FirstLine);
        // To the side where the landing lies.
        var inwards = Line2.Between(riser.Outer, corner).LeftOf(turn.Centre) > 0 ? 1 : -1;
        sketch.Span(riser.Outer, corner, inwards * In);
        return sketch;
    }
}
