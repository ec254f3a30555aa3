using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Least clearance under a sloping roof over the upper floor, over the whole clear width: it is found at a side.</summary>
public sealed class HeadroomSideRule : Rule
{
    private HeadroomSideRule() : base("headroom-side", "RW3032", "the headroom under the slope, at the side", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static HeadroomSideRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "no sloping ceiling of the upper storey hangs over the stair";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) => HeadroomReport.Of(plan) is { } report
        ? report.Under.Where(c => c.Under is { Slopes: true, OverUpperFloor: true }).Select(c => new Measurement(HeadroomWords.Where(plan, c), c.Least)) : [];

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        $"move the stair {plan.Units.With(range.Least!.Value - worst.Value)} further from under the slope, measured plumb, or turn it the other way";
}
