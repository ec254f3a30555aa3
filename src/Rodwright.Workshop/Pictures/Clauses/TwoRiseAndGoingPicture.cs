using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The rise up to a step, the rise after it and its going: twice the rise and the going.</summary>
internal static class TwoRiseAndGoingPicture
{
    public static Sketch Draw(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var section = new StepSection(plan);
        var step = Places.Step(plan, check);
        var (a, b) = (section.Face(step, step - 1), section.Face(step + 1, step + 1));
        var front = section.Nosing(step).X;
        var sketch = new Sketch(Box2.Of([new(front, a.Y - plan.Job.Practice.Tread), b]), left: 20, bottom: 3, right: 12, top: 12) { Units = plan.Units };
        section.Draw(sketch);
        sketch.Span(new(front, section.Level(step - 1)), new(front, section.Level(step)), 8);
        sketch.Span(new(front, section.Level(step)), new(front, section.Level(step + 1)), 8);
        sketch.Span(new(a.X, b.Y), b, 4);
        return sketch;
    }
}
