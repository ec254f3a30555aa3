using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Clear width between the faces of the strings; handrails are not set out, and take from it.</summary>
public sealed class ClearWidthRule : Rule
{
    private ClearWidthRule() : base("clear-width", "RW3025", "the clear width", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static ClearWidthRule Instance { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) =>
        [new("stair", plan.ClearWidth)];

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst)
    {
        var width = plan.Job.Width + range.Least!.Value - plan.ClearWidth;
        return Advice.Of($"make the stair {plan.Units.With(width)} over strings, and more for handrails", Remedied.Width(plan.Units, plan.Units.Up(width - Tolerance.Same)));
    }
}
