using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The narrow end of each tapered step, as going along the newel's and the string's faces.</summary>
public sealed class NarrowAlongFacesRule : Rule
{
    private NarrowAlongFacesRule() : base("narrow-along-faces", "RW3014", "the narrow end along the faces", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static NarrowAlongFacesRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no tapered steps";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        foreach (var step in TaperedSteps.Of(plan)) yield return new(TaperedSteps.Where(step), step.NarrowAlongFaces);
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        TaperedSteps.Wider(plan, range.Least!.Value - worst.Value);
}
