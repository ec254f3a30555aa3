using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The rise of every step: all are equal, so one is measured.</summary>
public sealed class RiseRule : Rule
{
    private RiseRule() : base("rise", "RW3001", "the rise", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static RiseRule Instance { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) =>
        [new("every step", plan.Rise)];

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst)
    {
        var height = plan.Job.Survey.Height;
        var risers = worst.Value > range.Most ? (int)Math.Ceiling(height / range.Most!.Value) : (int)Math.Floor(height / range.Least!.Value);
        return risers < 2
            ? "check the height: no number of risers keeps this rise"
            : Advice.Of($"{risers} risers instead of {plan.Risers} make a rise of {plan.Units.With(height / risers)}", Way.Of(Remedied.Risers(plan.Job, risers)));
    }
}
