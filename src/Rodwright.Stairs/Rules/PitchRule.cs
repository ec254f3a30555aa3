using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Proposals;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The pitch of the straight steps.</summary>
public sealed class PitchRule : Rule
{
    private PitchRule() : base("pitch", "RW3003", "the pitch", RuleUnit.Degrees) { }

    /// <summary>The one instance.</summary>
    public static PitchRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no straight steps";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) =>
        plan.Steps.Contains(StepKind.Straight) ? [new("straight steps", plan.Pitch.Degrees)] : [];

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst)
    {
        // Rounded up to a whole step of the unit, so that what is offered keeps the limit.
        var going = plan.Units.Up(plan.Rise / Angle.FromDegrees(range.Most!.Value).Tangent - Tolerance.Same);
        var rise = plan.Job.Survey.Height / (plan.Risers + 1);
        var fewer = Angle.OfPitch(rise, plan.Going).Degrees;
        return Advice.Of(
            $"a going of {plan.Units.With(going)} brings the pitch to {Number.Print(Angle.OfPitch(plan.Rise, going).Degrees, 2)}°; one riser more, {plan.Risers + 1} of {plan.Units.With(rise)}, to {Number.Print(fewer, 2)}°",
            Remedied.Going(plan.Units, going), Way.Of(Remedied.Risers(plan.Job, RiserSplit.NotAbove(plan.Job.Survey.Height, plan.Going * Angle.FromDegrees(range.Most!.Value).Tangent).Risers)));
    }
}
