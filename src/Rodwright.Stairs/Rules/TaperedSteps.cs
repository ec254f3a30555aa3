using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Rules;

/// <summary>What the rules of tapered steps have in common: the steps, their going by the regulation's measure, and what frees them.</summary>
internal static class TaperedSteps
{
    public static ImmutableArray<TaperedStep> Of(StairPlan plan) => plan.Turn?.Steps ?? [];

    public static string Where(TaperedStep step) => "step " + Number.Print(step.Number);

    public static double Going(StairPlan plan, TaperedStep step) => plan.Regulation.Going == GoingMeasure.Chord ? step.GoingChord : step.GoingArc;

    /// <summary>What makes the goings on the walking line at least so long, the narrow ends kept as they must be.</summary>
    public static string Longer(StairPlan plan, double going) => TurnRemedies.Words(plan, Planner.Wanted(plan.Job, plan.Regulation) with { Going = going });

    public static string Shorter(StairPlan plan) => $"one tapered step more, {Of(plan).Length + 1}, shortens their goings; a narrower stair does too";

    /// <summary>What widens the narrow ends by so much each, the goings kept as they must be.</summary>
    public static string Wider(StairPlan plan, double by) =>
        TurnRemedies.Words(plan, Planner.Wanted(plan.Job, plan.Regulation) with { Narrow = Of(plan).Min(s => s.NarrowAlongFaces) + by });

    public static string OneFewer(StairPlan plan) => Of(plan).Length > 2
        ? $"{Of(plan).Length - 1} tapered steps instead of {Of(plan).Length} (goings of about {Number.Print(Of(plan).Sum(s => Going(plan, s)) / (Of(plan).Length - 1))} mm)"
        : "a quarter landing in place of the tapered steps";
}
