using Rodwright.Geometry;
using Rodwright.Stairs.Plans;
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
    public override string Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        $"goings of {Mm(Math.Ceiling(plan.Rise / Angle.FromDegrees(range.Most!.Value).Tangent))} on the walking line would do: one riser more lowers the rise to {Mm(plan.Job.Survey.Height / (plan.Risers + 1))}, {TaperedSteps.OneFewer(plan)}";
}
