using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Proposals;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The pitch of each tapered step on the walking line.</summary>
public sealed class TaperedPitchRule : Rule
{
    private TaperedPitchRule() : base("tapered-pitch", "RW3004", "the pitch of the tapered steps on the walking line", RuleUnit.Degrees) { }

    /// <summary>The one instance.</summary>
    public static TaperedPitchRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no tapered steps";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        foreach (var step in TaperedSteps.Of(plan)) yield return new(TaperedSteps.Where(step), Angle.OfPitch(plan.Rise, TaperedSteps.Going(plan, step)).Degrees);
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst)
    {
        var slope = Angle.FromDegrees(range.Most!.Value).Tangent;
        var least = TaperedSteps.Of(plan).Select(s => TaperedSteps.Going(plan, s)).DefaultIfEmpty(plan.Going).Min();
        var (going, risers) = (Math.Ceiling(plan.Rise / slope - Tolerance.Same), RiserSplit.NotAbove(plan.Job.Survey.Height, least * slope).Risers);
        return Advice.Of(
            $"goings of {plan.Units.With(going)} on the walking line would do: one riser more lowers the rise to {plan.Units.With(plan.Job.Survey.Height / (plan.Risers + 1))}, {TaperedSteps.OneFewer(plan)}",
            [Way.Of(Remedied.Risers(plan.Job, risers)), .. TaperedSteps.Longer(plan, going).Ways]);
    }
}
