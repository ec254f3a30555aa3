using Rodwright.Geometry;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Clear gap between balusters, and between the last of them and the newel, on flights and landings.</summary>
public sealed class GuardingGapRule : Rule
{
    private GuardingGapRule() : base("guarding-gap", "RW3045", "the gap between balusters", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static GuardingGapRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "no balusters are set out: check their gaps by hand";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) => Gaps(plan, k => k != RailKind.Wall);

    internal static IEnumerable<Measurement> Gaps(StairPlan plan, Func<RailKind, bool> kinds) => BalustradePlan.Of(plan) is not { } balustrade ? [] :
        balustrade.Rails.Where(r => kinds(r.Kind) && r.Kind != RailKind.Wall).Select(r => new Measurement("balusters under " + r.Name, balustrade.RowOf(plan, r).Gap));

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) => Closer(plan, range);

    internal static Advice Closer(StairPlan plan, LimitRange range)
    {
        var gap = plan.Units.Down(range.Most!.Value + Tolerance.Same - (plan.Units.IsInches ? plan.Units.Step : 1));
        return Advice.Of($"a greatest gap of {plan.Units.With(gap)} (balustrade.gap)", Way.Of(Findings.Remedy.Of($"a greatest gap of {plan.Units.Print(gap)}", FieldChange.To("balustrade.gap", gap))));
    }
}
