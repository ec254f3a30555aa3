using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Clear gap between the balusters of landings, where a document asks for less there than on the flight.</summary>
public sealed class LandingGapRule : Rule
{
    private LandingGapRule() : base("landing-gap", "RW3046", "the gap between a landing's balusters", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static LandingGapRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "no landing's balusters are set out: check their gaps by hand";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) => GuardingGapRule.Gaps(plan, k => k == RailKind.Landing);

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) => GuardingGapRule.Closer(plan, range);
}
