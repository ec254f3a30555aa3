using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Height of the guarding on the open sides of flights: the handrail's top plumb above each nosing. Round a newel between two rails the newel guards.</summary>
public sealed class GuardingHeightRule : Rule
{
    private GuardingHeightRule() : base("guarding", "RW3043", "the height of the guarding on the flight", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static GuardingHeightRule Instance { get; } = new();

    /// <inheritdoc/>
    internal override bool MayBeUnlimited => true;

    /// <inheritdoc/>
    public override string Nothing => "no balustrade is set out on an open side: check height and gaps by hand";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) => HandrailHeightRule.Over(plan, k => k == RailKind.Flight);

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) => HandrailHeightRule.Raised(plan, range, worst);
}
