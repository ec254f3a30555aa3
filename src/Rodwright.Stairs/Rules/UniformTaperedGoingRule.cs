using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Largest going of the tapered steps less smallest, on the walking line.</summary>
public sealed class UniformTaperedGoingRule : Rule
{
    private UniformTaperedGoingRule() : base("uniform-tapered-going", "RW3013", "the difference between goings of tapered steps", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static UniformTaperedGoingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no tapered steps";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        var steps = TaperedSteps.Of(plan);
        if (steps.IsEmpty) yield break;
        yield return new("tapered steps", steps.Max(s => TaperedSteps.Going(plan, s)) - steps.Min(s => TaperedSteps.Going(plan, s)));
    }

    /// <inheritdoc/>
    public override string Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        "set the tapered steps out by equal goings";
}
