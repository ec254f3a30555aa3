using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Turns;

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
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        Advice.Of("set the tapered steps out by equal goings", Way.Of(TurnCatalogue.Winders.Select(m => plan.Turns.FirstOrDefault(t => t.Kind == TurnKind.Winders && t.Method != m.Id) is { } turn
            ? Findings.Remedy.Of(m.Title, Remedied.WithTurn(plan.Job, turn.Index, turn.Turn with { Method = m.Id })) : null)));
}
