using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The narrow end of each tapered step, straight across from riser to riser.</summary>
public sealed class NarrowStraightRule : Rule
{
    private NarrowStraightRule() : base("narrow-straight", "RW3015", "the narrow end straight across", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static NarrowStraightRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no tapered steps";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        foreach (var step in TaperedSteps.Of(plan)) yield return new(TaperedSteps.Where(step), step.NarrowStraight);
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        TaperedSteps.Wider(plan, range.Least!.Value - worst.Value);
}
