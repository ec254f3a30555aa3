using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>How far the nosing stands in front of the riser face below it.</summary>
public sealed class NosingRule : Rule
{
    private NosingRule() : base("nosing", "RW3021", "the nosing", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static NosingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) =>
        [new("every step", plan.Job.Practice.Nosing)];

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        worst.Value < range.Least
            ? Advice.Of($"make practice.nosing {plan.Units.With(range.Least!.Value)} or more", Nosing(plan, range.WholeAtLeast(plan.Units)))
            : Advice.Of($"make practice.nosing {plan.Units.With(range.Most!.Value)} or less", Nosing(plan, range.WholeAtMost(plan.Units)));

    private static Remedy Nosing(StairPlan plan, double nosing) => Findings.Remedy.Of($"a nosing of {plan.Units.With(nosing)}", FieldChange.To("practice.nosing", nosing));
}
