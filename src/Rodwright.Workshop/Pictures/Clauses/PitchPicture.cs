using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The pitch, from level up to the line over the nosings.</summary>
internal static class PitchPicture
{
    private const double Radius = 12; // of the arc, mm of paper

    public static Sketch Draw(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var section = new StepSection(plan);
        var step = Places.Step(plan, check);
        var (apex, next) = (section.Nosing(step), section.Nosing(step) + (section.Face(step + 1, step + 1) - section.Face(step, step)));
        var sketch = new Sketch(Box2.Of([apex - new Vector2(0, 2 * plan.Job.Practice.Tread), next]), left: 9, bottom: 3, right: 20, top: 8) { Units = plan.Units };
        section.Draw(sketch);
        var along = (next - apex).Unit;
        var over = 200 * sketch.Place.Scale.Ratio;
        sketch.Draw(Path2.Polyline(apex - over * along, next + over * along), PicturePens.Edge, Layer.Dimension);
        sketch.Pitch(apex, along, Radius);
        return sketch;
    }
}
