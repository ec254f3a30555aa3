using System.Collections.Immutable;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Least vertical clearance over the whole clear width, the landings and the floors at both ends, under each thing above that was measured.</summary>
public sealed class HeadroomRule : Rule
{
    private HeadroomRule() : base("headroom", "RW3030", "the headroom", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static HeadroomRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "not measured yet: give the well and its trimmer (survey.well), and any sloping ceiling (survey.ceilings)";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan) =>
        HeadroomReport.Of(plan) is { } report ? report.Under.Select(c => new Measurement(HeadroomWords.Where(plan, c), c.Least)) : [];

    /// <summary>Whether all that hangs lower than a limit is a sloping roof over the upper floor: some tables then judge in the middle and at the side.</summary>
    internal static bool OnlyUnderSlope(StairPlan plan, double limit) => HeadroomReport.Of(plan) is { } report
        && report.Under.Where(c => c.Least < limit).ToList() is { Count: > 0 } low && low.TrueForAll(c => c.Under is { Slopes: true, OverUpperFloor: true });

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst)
    {
        var limit = range.Least!.Value;
        if (HeadroomReport.Of(plan) is not { } report || report.Under.FirstOrDefault(c => HeadroomWords.Where(plan, c) == worst.Where) is not { } found) return "measure what is above the stair again";
        if (!found.Under.IsTrimmer)
            return $"move the stair away from the low side of {found.Under.Name}, or take steps out of the part under it: {plan.Units.With(limit - found.Least)} more is needed there";
        var longer = WellLonger.For(report, limit);
        var words = longer.IsEmpty ? "make the well longer" : string.Join(" and ", longer.Select(w => $"make the well {plan.Units.With(w.By)} longer {HeadroomWords.Towards(plan, w)}"));
        return Advice.Of(words + ", or begin the stair further from under the floor", Ways(plan, longer));
    }

    private static ImmutableArray<Way> Ways(StairPlan plan, ImmutableArray<WellLonger> longer)
    {
        // A rectangle whose far end stands where the stair needs it grows back towards the foot.
        if (plan.Job.Survey.Well is not { IsRectangle: true, Along: null } well || longer is not [var only] || !HeadroomWords.Towards(plan, only).EndsWith("foot", StringComparison.Ordinal)) return [];
        var more = plan.Units.Up(only.By - 1e-6);
        return [Findings.Remedy.Of($"the well {plan.Units.With(more)} longer", FieldChange.ToList("survey.well.length", well.Length.Values.Select(v => v + more)))];
    }
}
