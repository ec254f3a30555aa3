using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The clear width, from the face of one string to the face of the other.</summary>
internal static class WidthPicture
{
    public static Sketch Draw(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var (inner, outer) = Ends(plan);
        var thick = Math.Max(plan.InnerThickness, plan.OuterThickness);
        var across = (outer - inner).Unit;
        var sketch = new Sketch(Box2.Of([inner - thick * across, outer + thick * across]), 5, 5, 5, 5) { Units = plan.Units };
        PlanGround.Draw(sketch, view);
        sketch.Span(inner, outer);
        return sketch;
    }

    /// <summary>Opposite points of two parallel string faces, in the middle of where they stand longest beside one another.</summary>
    private static (Point2 Inner, Point2 Outer) Ends(StairPlan plan)
    {
        (Point2, Point2)? best = null;
        var longest = 0.0;
        foreach (var a in plan.Inner.Edges.Where(e => e.Kind == BoundaryKind.StringFace && e.Length > Tolerance.Same))
        {
            foreach (var b in plan.Outer.Edges.Where(e => e.Kind == BoundaryKind.StringFace && e.Length > Tolerance.Same && e.Along.Dot(a.Along) > 1 - 1e-9))
            {
                var line = new Line2(a.From, a.Along);
                var (from, to) = (Math.Max(0, line.Station(b.From)), Math.Min(a.Length, line.Station(b.To)));
                // Of one flight: flights that run the same way further off stand apart by more.
                if (to - from <= longest || Math.Abs(Math.Abs(line.LeftOf(b.From)) - plan.ClearWidth) > 1) continue;
                longest = to - from;
                var middle = MiddleOfStep(plan, line, from, to);
                best = (middle, new Line2(b.From, b.Along).At(new Line2(b.From, b.Along).Station(middle)));
            }
        }
        if (best is { } found) return found;
        // No string faces another: the width as it would be between them, from the wall string at the first riser.
        var riser = plan.Riser(1);
        return (riser.Outer + plan.ClearWidth * (riser.Inner - riser.Outer).Unit, riser.Outer);
    }

    /// <summary>A place near the middle that lies between two riser lines, so that the dimension runs over none.</summary>
    private static Point2 MiddleOfStep(StairPlan plan, Line2 line, double from, double to)
    {
        var wanted = (from + to) / 2;
        var middles = Enumerable.Range(1, plan.Risers - 1)
            .Where(k => plan.Steps[k - 1] == StepKind.Straight && Math.Abs(plan.Riser(k).Up.Dot(line.Along)) > 0.5)
            .Select(k => (line.Station(plan.Riser(k).Walking) + line.Station(plan.Riser(k + 1).Walking)) / 2)
            .Where(s => s > from && s < to).ToList();
        return line.At(middles.Count == 0 ? wanted : middles.MinBy(s => Math.Abs(s - wanted)));
    }
}
