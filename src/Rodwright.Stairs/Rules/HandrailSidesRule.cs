using Rodwright.Geometry;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>On how many sides each flight has a handrail.</summary>
public sealed class HandrailSidesRule : Rule
{
    private HandrailSidesRule() : base("handrail-sides", "RW3041", "the number of sides with a handrail", RuleUnit.Count) { }

    /// <summary>The one instance.</summary>
    public static HandrailSidesRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "no handrail is set out (balustrade): check its sides by hand";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        if (BalustradePlan.Of(plan) is not { } balustrade) yield break;
        foreach (var flight in plan.Flights.Where(f => f.Goings > 0))
        {
            var beside = balustrade.Rails.Where(r => r.String is { } s && s.Face.Along.Dot(flight.Along) > 1 - 1e-9 && s.FirstRiser <= flight.LastRiser && s.LastRiser >= flight.FirstRiser);
            yield return new(plan.Flights.Length == 1 ? "flight" : "flight " + Number.Print(flight.Index + 1, 0), beside.Select(r => r.String!.Inner).Distinct().Count());
        }
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) => Advice.Of(
        "a handrail on the wall too (balustrade.wallRail.wanted)",
        Way.Of([Findings.Remedy.Of("wall rails where they are asked for", FieldChange.To("balustrade.wallRail.wanted", "asked")), Findings.Remedy.Of("wall rails on every wall", FieldChange.To("balustrade.wallRail.wanted", "always"))]));
}
