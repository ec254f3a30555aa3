using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The nosing, in front of the riser face below it.</summary>
internal static class NosingPicture
{
    public static Sketch Draw(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var section = new StepSection(plan);
        var practice = plan.Job.Practice;
        var (front, face) = (section.Nosing(1), section.Face(1, 1));
        var under = front.Y - practice.Tread;
        var sketch = new Sketch(Box2.Of([front, new(face.X, under)]).Grown(Math.Max(practice.Nosing, practice.Tread) / 2), bottom: 18, top: 2) { Units = plan.Units };
        section.Draw(sketch);
        sketch.Span(new(front.X, under), new(face.X, under), -7);
        return sketch;
    }
}
