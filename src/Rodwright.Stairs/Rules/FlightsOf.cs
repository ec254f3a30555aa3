using System.Collections.Immutable;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Rules;

/// <summary>The flights of a stair as regulations count them: from landing to landing.</summary>
internal static class FlightsOf
{
    /// <summary>What breaks a long flight: a landing where tapered steps are, or the landing nearer the middle.</summary>
    public static ImmutableArray<Way> Shorter(StairPlan plan) => [Way.Of(Remedied.Landing(plan.Job)), Moved(plan)];

    /// <summary>The turn moved, the least move first, up to half the stair.</summary>
    public static Way Moved(StairPlan plan) => Way.Of(Moves(plan));

    private static IEnumerable<Remedy?> Moves(StairPlan plan)
    {
        if (plan.Turn is null) yield break;
        for (var steps = 1; steps <= plan.Risers / 2; steps++)
        {
            yield return Remedied.TurnMoved(plan.Job, steps);
            yield return Remedied.TurnMoved(plan.Job, -steps);
        }
    }

    /// <summary>Each flight and its number of risers, from the bottom up; a landing belongs to the flight that arrives at it.</summary>
    public static IEnumerable<(string Where, int Risers)> Plan(StairPlan plan)
    {
        var landing = plan.Steps.IndexOf(StepKind.Landing);
        if (landing < 0)
        {
            yield return ("flight", plan.Risers);
            yield break;
        }
        yield return ("lower flight", landing + 1);
        yield return ("upper flight", plan.Risers - landing - 1);
    }
}
