using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Largest going of the straight steps less smallest, measured square between riser lines on the walking line.</summary>
public sealed class UniformGoingRule : Rule
{
    private UniformGoingRule() : base("uniform-going", "RW3007", "the difference between goings of straight steps", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static UniformGoingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no straight steps";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var k = 1; k < plan.Risers; k++)
        {
            if (plan.Steps[k - 1] != StepKind.Straight) continue;
            var going = StraightSteps.Going(plan, k);
            (least, most) = (Math.Min(least, going), Math.Max(most, going));
        }
        if (least <= most) yield return new("straight steps", most - least);
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        "set all straight steps out to one going";
}
