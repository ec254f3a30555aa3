using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>Rises, from tread to tread in a section.</summary>
internal static class RisePictures
{
    private const double Out = 9; // of the dimension before the nosing, mm of paper

    public static Sketch Rise(PlanView view, ClauseCheck check) => Draw(view, 1);

    /// <summary>Two rises that follow one another: all are equal.</summary>
    public static Sketch Uniform(PlanView view, ClauseCheck check) => Draw(view, 2);

    private static Sketch Draw(PlanView view, int rises)
    {
        var plan = view.Stair.Plan;
        var section = new StepSection(plan);
        // Up from the first tread, or from the floor where there are too few.
        var low = Math.Max(0, Math.Min(1, plan.Risers - rises));
        var (foot, head) = (section.Nosing(low + 1), section.Nosing(low + rises));
        var sketch = new Sketch(Box2.Of([new(foot.X, section.Level(low) - 2 * plan.Job.Practice.Tread), new(section.Face(low + rises, 0).X + 0.5 * plan.Going, head.Y)]), left: 22, bottom: 3, right: 2) { Units = plan.Units };
        section.Draw(sketch);
        var front = foot.X;
        for (var k = low; k < low + rises; k++) sketch.Span(new(front, section.Level(k)), new(front, section.Level(k + 1)), Out);
        return sketch;
    }
}
