using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>How far tapered steps reach out of their turn into a straight part, along the walking line, from its bend to their first or last riser.</summary>
public sealed class TaperReachRule : Rule
{
    private TaperReachRule() : base("taper-reach", "RW3027", "the reach of tapered steps beyond the bend", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static TaperReachRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "no tapered step reaches beyond a bend of the walking line";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        foreach (var run in TaperedRun.Of(plan))
        {
            if (run.Before is { } before) yield return new("step " + Number.Print(run.First), before.From.DistanceTo(before.To));
            if (run.After is { } after) yield return new("step " + Number.Print(run.Last), after.From.DistanceTo(after.To));
        }
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        $"taper fewer of the straight steps: {plan.Units.With(range.Most!.Value)} beyond the bend is the most";
}
