using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The most risers climbed without turning.</summary>
public sealed class StraightRunRule : Rule
{
    private StraightRunRule() : base("straight-run", "RW3024", "the number of risers without a change of direction", RuleUnit.Count) { }

    /// <summary>The one instance.</summary>
    public static StraightRunRule Instance { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        // From turn to turn, the risers at both ends counted.
        yield return new("stair", plan.Flights.Max(f => f.LastRiser - f.FirstRiser + 1));
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        Advice.Of("put a turn of 30° or more between the flights", FlightsOf.Moved(plan));
}
