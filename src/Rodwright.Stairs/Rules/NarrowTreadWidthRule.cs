using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The narrow end of each tapered step, as width of the tread: along the faces and the nosing.</summary>
public sealed class NarrowTreadWidthRule : Rule
{
    private NarrowTreadWidthRule() : base("narrow-tread-width", "RW3016", "the narrow end as tread width", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static NarrowTreadWidthRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no tapered steps";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        foreach (var step in TaperedSteps.Of(plan)) yield return new(TaperedSteps.Where(step), step.NarrowTreadWidth);
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        TaperedSteps.Wider(plan, range.Least!.Value - worst.Value);
}
