using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Twice the rise and the going, of straight steps and of tapered steps on the walking line.</summary>
public sealed class TwoRiseAndGoingRule : Rule
{
    private const string Straight = "straight steps";

    private TwoRiseAndGoingRule() : base("two-rise-and-going", "RW3005", "twice the rise and the going together", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static TwoRiseAndGoingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        if (plan.Steps.Contains(StepKind.Straight)) yield return new(Straight, 2 * plan.Rise + plan.Going);
        foreach (var step in TaperedSteps.Of(plan)) yield return new(TaperedSteps.Where(step), 2 * plan.Rise + TaperedSteps.Going(plan, step));
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        worst.Value < range.Least
            ? Advice.Of(
                $"make the going {plan.Units.With(range.Least!.Value - worst.Value)} longer, or take a riser out: {plan.Risers - 1} rise {plan.Units.With(plan.Job.Survey.Height / Math.Max(1, plan.Risers - 1))}",
                [.. Longer(plan, worst, range.Least!.Value - worst.Value), Way.Of(new[] { 1, 2, 3 }.Select(i => Remedied.Risers(plan.Job, plan.Risers - i)))])
            : Advice.Of(
                $"make the going {plan.Units.With(worst.Value - range.Most!.Value)} shorter, or add a riser: {plan.Risers + 1} rise {plan.Units.With(plan.Job.Survey.Height / (plan.Risers + 1))}",
                [.. Shorter(plan, worst, worst.Value - range.Most!.Value), Way.Of(new[] { 1, 2, 3 }.Select(i => Remedied.Risers(plan.Job, plan.Risers + i)))]);

    private static ImmutableArray<Way> Longer(StairPlan plan, Measurement worst, double by) => worst.Where == Straight
        ? [Remedied.Going(plan.Units, plan.Units.Up(plan.Going + by - Tolerance.Same))]
        : TaperedSteps.Longer(plan, worst.Value - 2 * plan.Rise + by).Ways;

    private static ImmutableArray<Way> Shorter(StairPlan plan, Measurement worst, double by) => worst.Where == Straight
        ? [Remedied.Going(plan.Units, plan.Units.Down(plan.Going - by + Tolerance.Same))]
        : TaperedSteps.Shorter(plan).Ways;
}
