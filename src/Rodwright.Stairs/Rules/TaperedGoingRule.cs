using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The going of each tapered step on the walking line, as chord or arc by the regulation.</summary>
public sealed class TaperedGoingRule : Rule
{
    private TaperedGoingRule() : base("tapered-going", "RW3011", "the going of a tapered step", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static TaperedGoingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no tapered steps";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        foreach (var step in TaperedSteps.Of(plan)) yield return new(TaperedSteps.Where(step), TaperedSteps.Going(plan, step));
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        worst.Value < range.Least ? TaperedSteps.Longer(plan, range.Least!.Value) : TaperedSteps.Shorter(plan);
}
