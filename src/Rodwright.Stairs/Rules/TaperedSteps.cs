using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>What the rules of tapered steps have in common: the steps, their going by the regulation's measure, and what frees them.</summary>
internal static class TaperedSteps
{
    public static ImmutableArray<TaperedStep> Of(StairPlan plan) => plan.Turn?.Steps ?? [];

    public static string Where(TaperedStep step) => "step " + Number.Print(step.Number);

    public static double Going(StairPlan plan, TaperedStep step) => plan.Regulation.Going == GoingMeasure.Chord ? step.GoingChord : step.GoingArc;

    /// <summary>What makes the goings on the walking line at least so long.</summary>
    public static string Longer(StairPlan plan, double going)
    {
        var missing = Of(plan).Length * going - Of(plan).Sum(s => Going(plan, s));
        // A quarter circle grows by pi/2 of its radius; the middle line moves out by half of what is added to the width.
        var wider = missing / (Math.PI / 2) * (plan.ClearWidth < plan.Regulation.WalkingLine.MiddleBelow * plan.Job.ModelScale ? 2 : 1);
        var risers = $"set the turn's risers {Number.Print(missing / 2)} mm further out each";
        return wider > 0 ? $"{risers}, make the stair about {Number.Print(Math.Ceiling(wider))} mm wider, or {OneFewer(plan)}" : $"set the tapered steps out by equal goings, or {OneFewer(plan)}";
    }

    public static string Shorter(StairPlan plan) => $"one tapered step more, {Of(plan).Length + 1}, shortens their goings; a narrower stair does too";

    /// <summary>What widens the narrow ends by so much each.</summary>
    public static string Wider(StairPlan plan, double by)
    {
        var missing = by * Of(plan).Length;
        return $"set the turn's risers {Number.Print(missing / 2)} mm further out each, take a newel about {Number.Print(Math.Ceiling(missing / 2))} mm larger, or {OneFewer(plan)}";
    }

    public static string OneFewer(StairPlan plan) => Of(plan).Length > 2
        ? $"{Of(plan).Length - 1} tapered steps instead of {Of(plan).Length} (goings of about {Number.Print(Of(plan).Sum(s => Going(plan, s)) / (Of(plan).Length - 1))} mm)"
        : "a quarter landing in place of the tapered steps";
}
