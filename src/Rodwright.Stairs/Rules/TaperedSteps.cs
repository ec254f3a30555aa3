using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Turns;
using System.Collections.Immutable;

namespace Rodwright.Stairs.Rules;

/// <summary>What the rules of tapered steps have in common: the steps, their going by the regulation's measure, and what frees them.</summary>
internal static class TaperedSteps
{
    public static ImmutableArray<TaperedStep> Of(StairPlan plan) => [.. plan.TaperedSteps];

    public static string Where(TaperedStep step) => "step " + Number.Print(step.Number);

    public static double Going(StairPlan plan, TaperedStep step) => plan.Regulation.Going == GoingMeasure.Chord ? step.GoingChord : step.GoingArc;

    /// <summary>What makes the goings on the walking line at least so long, the narrow ends kept as they must be.</summary>
    public static Advice Longer(StairPlan plan, double going) => TurnRemedies.For(plan, Planner.Wanted(plan.Job, plan.Regulation) with { Going = going });

    /// <summary>What shortens the goings on the walking line: a tapered step more, or the least narrowing of the stair by whole centimetres.</summary>
    public static Advice Shorter(StairPlan plan)
    {
        var narrower = Enumerable.Range(1, 30).Select(i => Remedied.Width(plan.Units, plan.Job.Width - plan.Units.Nearby(10) * i));
        var turn = plan.Turns.First(t => !t.Steps.IsEmpty);
        return Advice.Of($"one tapered step more, {turn.Turn.Tapered + 1}, shortens their goings; a narrower stair does too",
            Way.Of(Remedied.Tapered(plan.Job, turn.Index, turn.Turn.Tapered + 1)), Way.Of(narrower));
    }

    /// <summary>What widens the narrow ends by so much each, the goings kept as they must be.</summary>
    public static Advice Wider(StairPlan plan, double by) =>
        TurnRemedies.For(plan, Planner.Wanted(plan.Job, plan.Regulation) with { Narrow = Of(plan).Min(s => s.NarrowAlongFaces) + by });

    public static string OneFewer(StairPlan plan) => Of(plan).Length > 2
        ? $"{Of(plan).Length - 1} tapered steps instead of {Of(plan).Length} (goings of about {plan.Units.With(Of(plan).Sum(s => Going(plan, s)) / (Of(plan).Length - 1), 1)})"
        : "a quarter landing in place of the tapered steps";
}
