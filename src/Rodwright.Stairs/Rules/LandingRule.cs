using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Rules;

/// <summary>Both lengths of a quarter landing, from a riser face to the wall string it runs up to.</summary>
public sealed class LandingRule : Rule
{
    private LandingRule() : base("landing", "RW3026", "the length of the landing", RuleUnit.Millimetres) { }

    /// <summary>The one instance.</summary>
    public static LandingRule Instance { get; } = new();

    /// <inheritdoc/>
    public override string Nothing => "this stair has no landing between its flights";

    /// <inheritdoc/>
    public override IEnumerable<Measurement> Measure(StairPlan plan)
    {
        if (plan.Turn is not { Kind: TurnKind.Landing } turn) yield break;
        // The outer boundary turns once, in the corner of the walls.
        var corner = plan.Outer.Edges[0].To;
        yield return new("landing, way in", plan.Riser(turn.FirstLine).Outer.DistanceTo(corner));
        yield return new("landing, way out", plan.Riser(turn.LastLine).Outer.DistanceTo(corner));
    }

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst)
    {
        var (turn, further) = (plan.Turn!, range.Least!.Value - worst.Value);
        // Each way in is as long as the clear width and the riser's offset beyond the string's face.
        var e = Math.Ceiling(Math.Max(turn.FirstRiser, turn.LastRiser) + further - Tolerance.Same);
        var past = Math.Ceiling(plan.Job.Practice.Newel / 2 + plan.Job.Practice.Riser + plan.Job.Practice.Cover - Tolerance.Same);
        return Advice.Of(
            $"set the landing's risers {Mm(further)} further out (firstRiser, lastRiser), or make the stair wider",
            Way.Of([Remedied.TurnRisers(plan.Job, e, e), Remedied.TurnRisers(plan.Job, Math.Max(e, past), Math.Max(e, past))]), Remedied.Width(Math.Ceiling(plan.Job.Width + further - Tolerance.Same)));
    }
}
