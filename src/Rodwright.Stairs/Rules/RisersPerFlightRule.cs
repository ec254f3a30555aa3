using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Risers in each flight: a flight runs from landing to landing, tapered steps and all.</summary>
public sealed class RisersPerFlightRule : Rule
{
    private RisersPerFlightRule() : base("risers-per-flight", "RW3022", "the number of risers in a flight", RuleUnit.Count) { }

    /// <summary>The one instance.</summary>
    public static RisersPerFlightRule Instance { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        foreach (var (where, risers) in FlightsOf.Plan(plan)) yield return new(where, risers);
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        worst.Value > range.Most
            ? Advice.Of("break the flight with a landing", FlightsOf.Shorter(plan))
            : Advice.Of("a step or two by themselves are easily missed: join them to a flight", FlightsOf.Moved(plan));
}
