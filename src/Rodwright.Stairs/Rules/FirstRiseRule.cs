using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>
/// First rise less the others, where a document allows a floor finish or a building's tolerance there. The height is shared out equally from finished floor to
/// finished floor, so it is none until a finish is laid that the survey did not know.
/// </summary>
public sealed class FirstRiseRule : Rule
{
    private FirstRiseRule() : base("first-rise", "RW3008", "the difference between the first rise and the others", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static FirstRiseRule Instance { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) =>
        [new("first step", 0)];

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        "measure the height from finished floor to finished floor, and share it out equally";
}
