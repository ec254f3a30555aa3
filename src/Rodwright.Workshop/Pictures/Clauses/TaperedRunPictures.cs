using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>Tapered steps together, in plan: counted, the bend they go round, and how far they reach beyond it.</summary>
internal static class TaperedRunPictures
{
    /// <summary>A dot on each tapered step of a quarter turn.</summary>
    public static Sketch Count(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var run = TaperedRun.Of(plan).First(r => r.Where == check.Where);
        var counted = Enumerable.Range(run.First, (int)Math.Round(check.Measured!.Value)).ToList();
        var sketch = new Sketch(Around(plan, run), 3, 3, 3, 3) { Units = plan.Units };
        PlanGround.Draw(sketch, view, counted);
        foreach (var k in counted) sketch.Dot(plan.Riser(k).Walking.Towards(plan.Riser(k + 1).Walking, 0.5));
        sketch.Write(Number.Print(counted.Count, 2) + (counted.Count == 1 ? " tapered step" : " tapered steps"), [new(Sketch.Width / 2, 4), new(Sketch.Width / 2, Sketch.Height - 4)]);
        return sketch;
    }

    /// <summary>The radius of the tightest bend.</summary>
    public static Sketch Bend(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var run = TaperedRun.Of(plan).First(r => r.Where == check.Where);
        var arc = run.Arcs.MinBy(a => a.Radius);
        var sketch = new Sketch(Around(plan, run).With(arc.Centre), 3, 3, 3, 3) { Units = plan.Units };
        PlanGround.Draw(sketch, view);
        sketch.Span(arc.Centre, arc.At(0.5));
        return sketch;
    }

    /// <summary>From the bend to the riser that lies furthest beyond it.</summary>
    public static Sketch Reach(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var (run, stretch) = TaperedRun.Of(plan).SelectMany(r => new[] { (Run: r, Stretch: r.Before, Step: r.First), (Run: r, Stretch: r.After, Step: r.Last) })
            .Where(r => r.Stretch is not null && "step " + Number.Print(r.Step) == check.Where)
            .Select(r => (r.Run, r.Stretch!.Value)).MinBy(r => Math.Abs(r.Value.From.DistanceTo(r.Value.To) - check.Measured!.Value));
        var sketch = new Sketch(Around(plan, run), 3, 3, 3, 3) { Units = plan.Units };
        PlanGround.Draw(sketch, view, Enumerable.Range(run.First, run.Count));
        sketch.Span(stretch.From, stretch.To, 3);
        return sketch;
    }

    private static Box2 Around(StairPlan plan, TaperedRun run)
    {
        var box = Box2.Empty;
        for (var k = run.First; k <= run.Last + 1; k++) box = box.With(plan.Riser(k).Inner).With(plan.Riser(k).Outer);
        return box;
    }
}
