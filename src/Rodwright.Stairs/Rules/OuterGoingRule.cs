using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The going of each tapered step, straight across, on the second measuring line of wide stairs.</summary>
public sealed class OuterGoingRule : Rule
{
    private OuterGoingRule() : base("outer-going", "RW3012", "the going of a tapered step on the outer measuring line", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static OuterGoingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no tapered steps measured on two lines";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        foreach (var step in TaperedSteps.Of(plan)) if (step.OuterGoing is { } going) yield return new(TaperedSteps.Where(step), going);
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        worst.Value < range.Least ? TaperedSteps.Longer(plan, range.Least!.Value) : TaperedSteps.Shorter(plan);
}
