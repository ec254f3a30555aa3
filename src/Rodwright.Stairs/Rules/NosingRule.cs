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
    public override string Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        worst.Value < range.Least ? $"make practice.nosing {Mm(range.Least!.Value)} or more" : $"make practice.nosing {Mm(range.Most!.Value)} or less";
}
