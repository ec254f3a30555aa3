using System.Collections.Immutable;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Rules;

/// <summary>The flights of a stair as regulations count them: from landing to landing.</summary>
internal static class FlightsOf
{
    /// <summary>What breaks a long flight: a landing where tapered steps are, or the landing nearer the middle.</summary>
    public static ImmutableArray<Way> Shorter(StairPlan plan) => [.. plan.Turns.Select(t => Way.Of(Remedied.Landing(plan.Job, t.Index))), Moved(plan)];

    /// <summary>The turn moved, the least move first, up to half the stair.</summary>
    public static Way Moved(StairPlan plan) => Way.Of(Moves(plan));

    private static IEnumerable<Remedy?> Moves(StairPlan plan)
    {
        for (var steps = 1; steps <= plan.Risers / 2; steps++)
        {
            foreach (var turn in plan.Turns)
            {
                yield return Remedied.TurnMoved(plan.Job, turn.Index, steps);
                yield return Remedied.TurnMoved(plan.Job, turn.Index, -steps);
            }
        }
    }

    /// <summary>Each flight and its number of risers, from the bottom up; a landing belongs to the flight that arrives at it.</summary>
    public static IEnumerable<(string Where, int Risers)> Plan(StairPlan plan)
    {
        int[] floors = [0, .. Enumerable.Range(1, plan.Risers).Where(k => plan.Steps[k - 1] == StepKind.Landing), plan.Risers];
        for (var i = 1; i < floors.Length; i++)
        {
            var name = floors.Length switch { 2 => "flight", 3 => i == 1 ? "lower flight" : "upper flight", _ => "flight " + Geometry.Number.Print(i, 0) };
            yield return (name, floors[i] - floors[i - 1]);
        }
    }
}
