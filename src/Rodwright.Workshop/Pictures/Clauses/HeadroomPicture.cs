using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The least headroom: the steps in section, and plumb above them the underside of what is there.</summary>
internal static class HeadroomPicture
{
    public static Sketch Draw(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var report = HeadroomReport.Of(plan)!;
        var all = check.Clause.Rule is HeadroomMiddleRule ? report.InMiddle : report.Under;
        var found = all.First(c => HeadroomWords.Where(plan, c) == check.Where);
        var height = report.Surfaces.First(s => s.Step == found.Step).HeightAt(found.At);
        var section = new StepSection(plan);
        var foot = new Point2(Along(section, found.Step, plan.Risers, height / plan.Rise - found.Step), height);
        var head = foot + new Vector2(0, found.Least);
        var sketch = new Sketch(Box2.Of([foot - new Vector2(2 * plan.Going, plan.Rise), foot + new Vector2(2 * plan.Going, 0), head + new Vector2(0, plan.Rise / 2)]), left: 4, bottom: 2, right: 4, top: 2) { Units = plan.Units };
        section.Outline(sketch);
        var wide = 3 * plan.Going;
        // Along the section the underside is level, or falls away as the slope does; what counts is where it is nearest.
        sketch.Draw(Path2.Polyline(head - new Vector2(wide, 0), head + new Vector2(wide, 0)), PicturePens.Edge, Layer.Site);
        sketch.Span(foot, head);
        return sketch;
    }

    private static double Along(StepSection section, int step, int risers, double part) => step == 0 ? section.Nosing(1).X - 150
        : step >= risers ? section.Nosing(risers).X + 150
        : section.Nosing(step).X + Math.Clamp(part, 0, 1) * (section.Nosing(step + 1).X - section.Nosing(step).X);
}
