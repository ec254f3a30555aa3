using Rodwright.Geometry;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Height of the guarding along landings and the upper floor: the rail's top above the floor.</summary>
public sealed class LandingGuardingRule : Rule
{
    private LandingGuardingRule() : base("landing-guarding", "RW3044", "the height of the guarding on the landing", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static LandingGuardingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "no landing's balustrade is set out: check it by hand";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) =>
        (BalustradePlan.Of(plan)?.Rails ?? []).Where(r => r.Kind == RailKind.Landing).Select(r => new Measurement(r.Name, r.TopAt(r.From) - r.Floor));

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst)
    {
        var height = plan.Units.Up(range.Least!.Value - Tolerance.Same);
        return Advice.Of($"set the landing's rails {plan.Units.With(height)} above its floor (balustrade.landingHeight)",
            Way.Of(Findings.Remedy.Of($"landing rails {plan.Units.Print(height)} high", FieldChange.To("balustrade.landingHeight", height))));
    }
}
