using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The going of the straight steps, riser face to riser face.</summary>
public sealed class GoingRule : Rule
{
    private GoingRule() : base("going", "RW3002", "the going of the straight steps", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static GoingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no straight steps";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) =>
        plan.Steps.Contains(StepKind.Straight) ? [new("straight steps", plan.Going)] : [];

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        worst.Value < range.Least
            ? Advice.Of($"make the going {plan.Units.With(range.Least!.Value)} or more", Remedied.Going(plan.Units, range.WholeAtLeast(plan.Units)))
            : Advice.Of($"make the going {plan.Units.With(range.Most!.Value)} or less", Remedied.Going(plan.Units, range.WholeAtMost(plan.Units)));
}
