using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Tapered steps to a quarter turn: those that follow one another, shared among the quarters they turn, a part counted as a whole step.</summary>
public sealed class TaperedPerQuarterRule : Rule
{
    private TaperedPerQuarterRule() : base("tapered-per-quarter", "RW3018", "the number of tapered steps to a quarter turn", RuleUnit.Count) { }

    /// <summary>The one instance.</summary>
    public static TaperedPerQuarterRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no tapered steps";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        foreach (var run in TaperedRun.Of(plan)) yield return new(run.Where, (run.Count + run.Quarters - 1) / run.Quarters);
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst)
    {
        var (most, words) = ((int)range.WholeAtMost(Units.Millimetres), $"{Number.Print(range.WholeAtMost(Units.Millimetres), 0)} tapered steps in each quarter turn, or a landing");
        var turn = plan.Turns.Where(t => !t.Steps.IsEmpty).MaxBy(t => t.Turn.Tapered / (double)t.Turn.Quarters);
        return turn is null ? words
            : Advice.Of(words, Way.Of(Remedied.Tapered(plan.Job, turn.Index, most * turn.Turn.Quarters)), Way.Of(Remedied.Landing(plan.Job, turn.Index)));
    }
}
