using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Largest rise less smallest. The height is shared out equally, so it is none; carpets and screeds laid later are not known here.</summary>
public sealed class UniformRiseRule : Rule
{
    private UniformRiseRule() : base("uniform-rise", "RW3006", "the difference between rises", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static UniformRiseRule Instance { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) =>
        [new("all steps", 0)];

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        "share the height out equally";
}
