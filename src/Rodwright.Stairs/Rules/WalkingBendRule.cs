using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>The tightest bend of the walking line over tapered steps.</summary>
public sealed class WalkingBendRule : Rule
{
    private WalkingBendRule() : base("walking-bend", "RW3019", "the radius of the walking line's bend", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static WalkingBendRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no tapered steps on a bend";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        foreach (var run in TaperedRun.Of(plan))
            if (!run.Arcs.IsEmpty) yield return new(run.Where, run.Arcs.Min(a => a.Radius));
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst)
    {
        // On the middle line the radius grows by half of what the stair does.
        var width = plan.Job.Width + 2 * (range.Least!.Value - worst.Value);
        return Advice.Of($"make the stair {plan.Units.With(width)} over strings: the line goes round a greater radius", Remedied.Width(plan.Units, plan.Units.Up(width - Tolerance.Same)));
    }
}
