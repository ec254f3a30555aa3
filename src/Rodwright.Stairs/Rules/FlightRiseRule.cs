using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The height each flight climbs between landings.</summary>
public sealed class FlightRiseRule : Rule
{
    private FlightRiseRule() : base("flight-rise", "RW3023", "the height of a flight", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static FlightRiseRule Instance { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        foreach (var (where, risers) in FlightsOf.Plan(plan)) yield return new(where, risers * plan.Rise);
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        Advice.Of($"break the flight with a landing, at most {Number.Print(Math.Floor(range.Most!.Value / plan.Rise), 0)} risers up", FlightsOf.Shorter(plan));
}
