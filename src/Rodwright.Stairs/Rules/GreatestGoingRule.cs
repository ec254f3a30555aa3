using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The going of every step wherever the regulation measures it: straight, on the walking line, and on the outer measuring line of wide stairs.</summary>
public sealed class GreatestGoingRule : Rule
{
    private GreatestGoingRule() : base("greatest-going", "RW3017", "the longest going", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static GreatestGoingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        if (plan.Steps.Contains(StepKind.Straight)) yield return new("straight steps", plan.Going);
        foreach (var step in TaperedSteps.Of(plan)) yield return new(TaperedSteps.Where(step), Math.Max(TaperedSteps.Going(plan, step), step.OuterGoing ?? 0));
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        worst.Where == "straight steps"
            ? Advice.Of($"make the going {plan.Units.With(range.Most!.Value)} or less", Remedied.Going(plan.Units, range.WholeAtMost(plan.Units)))
            : TaperedSteps.Shorter(plan);
}
