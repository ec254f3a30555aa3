using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>Goings in plan, between riser faces on the line where they are measured.</summary>
internal static class GoingPictures
{
    private const double Beyond = 0.45; // of a going, seen past the measured steps

    public static Sketch Straight(PlanView view, ClauseCheck check) => Walking(view, Places.StraightStep(view.Stair.Plan));

    public static Sketch Tapered(PlanView view, ClauseCheck check) => Walking(view, Places.Step(view.Stair.Plan, check));

    public static Sketch Outer(PlanView view, ClauseCheck check) => Second(view, Places.Step(view.Stair.Plan, check));

    /// <summary>The longest going, on the line where it is longest.</summary>
    public static Sketch Greatest(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var step = Places.Step(plan, check);
        var outer = plan.TaperedSteps.FirstOrDefault(s => s.Number == step)?.OuterGoing ?? 0;
        return outer > Places.Going(plan, step) ? Second(view, step) : Walking(view, step);
    }

    public static Sketch UniformStraight(PlanView view, ClauseCheck check) => Two(view, StepKind.Straight);

    public static Sketch UniformTapered(PlanView view, ClauseCheck check) => Two(view, StepKind.Tapered);

    /// <summary>The longest and the shortest going of one kind of step; two that follow one another where all are equal.</summary>
    private static Sketch Two(PlanView view, StepKind kind)
    {
        var plan = view.Stair.Plan;
        var steps = Enumerable.Range(1, plan.Risers - 1).Where(k => plan.Steps[k - 1] == kind).ToList();
        var (least, most) = (steps.MinBy(Measured), steps.MaxBy(Measured));
        if (Measured(most) - Measured(least) > 1e-6) return Walking(view, least, most);
        var first = kind == StepKind.Straight ? Places.StraightStep(plan) : steps[0];
        return steps.Contains(first + 1) ? Walking(view, first, first + 1) : steps.Contains(first - 1) ? Walking(view, first - 1, first) : Walking(view, first);

        double Measured(int k) => kind == StepKind.Straight ? StraightSteps.Going(plan, k) : Places.Going(plan, k);
    }

    private static Sketch Walking(PlanView view, params int[] steps)
    {
        var plan = view.Stair.Plan;
        return Draw(view, steps, [.. steps.Select(k => (plan.Riser(k).Walking, plan.Riser(k + 1).Walking))]);
    }

    private static Sketch Second(PlanView view, int step)
    {
        var plan = view.Stair.Plan;
        var line = new SecondLine(plan, plan.TurnOf(step)!);
        var sketch = Draw(view, [step], [(line.On(plan.Riser(step)), line.On(plan.Riser(step + 1)))]);
        sketch.Draw(line.Path, PicturePens.Walking, Drawings.Marks.Layer.Centre);
        return sketch;
    }

    private static Sketch Draw(PlanView view, int[] steps, (Point2 From, Point2 To)[] goings)
    {
        var plan = view.Stair.Plan;
        var box = Box2.Empty;
        for (var i = 0; i < steps.Length; i++)
        {
            var (from, to) = goings[i];
            var past = Beyond * (to - from);
            box = box.With(from - past).With(to + past).With(plan.Riser(steps[i]).Inner).With(plan.Riser(steps[i] + 1).Inner);
            // Somewhat past the line, so that the lines going on are seen.
            box = box.With(from.Towards(plan.Riser(steps[i]).Outer, 0.25)).With(to.Towards(plan.Riser(steps[i] + 1).Outer, 0.25));
        }
        var sketch = new Sketch(box, 4, 4, 4, 4) { Units = plan.Units };
        PlanGround.Draw(sketch, view, steps);
        foreach (var (from, to) in goings) sketch.Span(from, to);
        return sketch;
    }
}
