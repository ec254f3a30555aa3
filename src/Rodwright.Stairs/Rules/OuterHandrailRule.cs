using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Whether there is a handrail along the outside of tapered steps: 1 where there is one, 0 where not.</summary>
public sealed class OuterHandrailRule : Rule
{
    private OuterHandrailRule() : base("outer-handrail", "RW3042", "the number of handrails on the outside of tapered steps", RuleUnit.Count) { }

    /// <summary>The one instance.</summary>
    public static OuterHandrailRule Instance { get; } = new();

    /// <inheritdoc/>
    internal override bool MayBeUnlimited => true;

    /// <inheritdoc/>
    public override string Nothing => "no handrail is set out beside tapered steps: where there are any, put one on their outer side";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        if (BalustradePlan.Of(plan) is not { } balustrade) yield break;
        foreach (var turn in plan.Turns.Where(t => !t.Steps.IsEmpty))
        {
            var inner = plan.IsInner(turn);
            yield return new(plan.Turns.Length == 1 ? "turn" : "turn " + Geometry.Number.Print(turn.Index + 1, 0),
                balustrade.Rails.Any(r => r.String is { } s && s.Inner != inner && r.Heights.Any(h => h.Riser >= turn.FirstLine && h.Riser <= turn.LastLine)) ? 1 : 0);
        }
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst) =>
        Advice.Of("a handrail on the outer wall (balustrade.wallRail.wanted)", Way.Of(Findings.Remedy.Of("wall rails on every wall", FieldChange.To("balustrade.wallRail.wanted", "always"))));
}
