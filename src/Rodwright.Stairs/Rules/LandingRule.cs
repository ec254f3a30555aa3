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
        foreach (var turn in plan.Turns.Where(t => t.Kind == TurnKind.Landing))
        {
            var name = plan.Turns.Count(t => t.Kind == TurnKind.Landing) == 1 ? "landing" : "landing of turn " + Number.Print(turn.Index + 1, 0);
            // From each riser's face, square to it, to the wall string it runs up to.
            var (o, w) = (turn.Site.OuterFace, turn.Site.Between);
            yield return new(name + ", way in", Far(plan, turn, turn.FirstLine).DistanceTo(turn.Frame.World(new(o, o))));
            yield return new(name + ", way out", Far(plan, turn, turn.LastLine).DistanceTo(turn.Frame.World(turn.Site.Quarters == 1 ? new(o, o) : new(-o - w, o))));
        }
    }

    /// <summary>The outer end of a riser of the turn.</summary>
    private static Point2 Far(StairPlan plan, TurnPlan turn, int riser) => plan.IsInner(turn) ? plan.Riser(riser).Outer : plan.Riser(riser).Inner;

    /// <inheritdoc/>
    public override Advice Remedy(StairPlan plan, LimitRange range, Measurement worst)
    {
        var turn = plan.Turns.Where(t => t.Kind == TurnKind.Landing).MinBy(t => Math.Min(t.FirstRiser, t.LastRiser))!;
        var further = range.Least!.Value - worst.Value;
        // Each way in is as long as the clear width and the riser's offset beyond the string's face.
        var e = Math.Ceiling(Math.Max(turn.FirstRiser, turn.LastRiser) + further - Tolerance.Same);
        var past = Math.Ceiling(plan.Job.Practice.Newel / 2 + plan.Job.Practice.Riser + plan.Job.Practice.Cover - Tolerance.Same);
        return Advice.Of(
            $"set the landing's risers {plan.Units.With(further)} further out (firstRiser, lastRiser), or make the stair wider",
            Way.Of([Remedied.TurnRisers(plan.Job, turn.Index, e, e), Remedied.TurnRisers(plan.Job, turn.Index, Math.Max(e, past), Math.Max(e, past))]), Remedied.Width(plan.Units, plan.Units.Up(plan.Job.Width + further - Tolerance.Same)));
    }
}
