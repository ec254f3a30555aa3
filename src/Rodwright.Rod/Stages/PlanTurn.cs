using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>The tapered risers, one after another: the dividers along the walking line, the narrow end on the newel, then joined and produced.</summary>
internal static class PlanTurn
{
    private const double Tick = 25; // either side of a mark, mm of timber

    public static IEnumerable<Stage> Of(PlanView view)
    {
        var plan = view.Stair.Plan;
        if (plan.Turn is not { } turn || turn.Steps.Length < 2) return [];
        var (along, wide) = (0.0, 0.0);
        var stages = new List<Stage>();
        for (var j = 1; j < turn.Steps.Length; j++)
        {
            along += turn.Steps[j - 1].NarrowAlongFaces;
            wide += turn.Steps[j - 1].Wide;
            stages.AddRange(Riser(view, turn, j, along, wide));
        }
        return stages;
    }

    private static IEnumerable<Stage> Riser(PlanView view, TurnPlan turn, int j, double along, double wide)
    {
        var (plan, words) = (view.Stair.Plan, new PlanWords(view));
        var (n, k) = (turn.Steps.Length, turn.FirstLine + j);
        var (riser, before) = (plan.Riser(k), plan.Riser(k - 1));
        var id = ThingId.Riser(k);
        var draft = new StageDraft($"plan-turn-{K(k)}", Bench.Plan, PlanGround.Subject, $"Plan: tapered riser {K(k)}");
        draft.Faint("step", $"going of step {K(k - 1)}", id, [Arc(before.Walking, riser.Walking)], Stepped(plan, turn, turn.Steps[j - 1], n));
        var into = Tick * (riser.Inner - riser.Outer).Unit;
        draft.Faint("narrow", $"narrow end of step {K(k - 1)}", id, [Path2.Polyline(riser.Inner - into, riser.Inner + into)], Narrow(plan, turn, j, along));
        draft.LinedIn("face", Say.Riser(k), id, [PlanRisers.Face(riser)], Proved(How(
            $"join the mark on the newel to the mark on the walking line, and produce the line to the {words.OuterString}'s face",
            $"two points fix the riser's face; the wall must answer: the wide ends so far come to {N(wide)}. If it does not, step again", "",
            new Measure($"{RiserFace(turn.FirstLine)}, along the {words.OuterString}'s face{(BeyondCorner(plan, riser) ? " and round the corner" : "")},", wide, "to where it arrives", "wide ends"))));
        return draft.Done();
    }

    private static Instruction Proved(Instruction how) => how with { Proves = true };

    private static bool BeyondCorner(StairPlan plan, RiserLine riser) => (riser.Outer - plan.Outer.Edges[0].To).Dot(plan.Outer.Edges[0].Along) > -0.01;

    private static Instruction Stepped(StairPlan plan, TurnPlan turn, TaperedStep step, int n)
    {
        var length = turn.FirstRiser + Math.PI / 2 * plan.WalkingRadius + turn.LastRiser;
        var datum = $"{RiserFace(step.Number)}, on the walking line,";
        var whole = $"L = {N(turn.FirstRiser)} + π/2 × {N(plan.WalkingRadius)} + {N(turn.LastRiser)} = {N(length)}";
        return turn.Method switch
        {
            "equal-arcs" => How("mark the point on the walking line", $"equal goings along the line: {whole}; L / {K(n)} = {N(step.GoingArc)}", "",
                new Measure(datum, step.GoingArc, "along the line, up the stair", "going")),
            "radiating" => How("mark the point on the walking line with the dividers",
                $"the risers radiate at equal angles of 90 / {K(n)} = {N(90.0 / n)}° from one centre, {N(turn.FirstRiser)} and {N(turn.LastRiser)} off the newel's centre lines; this is where the riser crosses the walking line", "",
                new Measure(datum, step.GoingChord, "straight across, up the stair", "going")),
            _ => How($"strike an arc over the walking line with the dividers; keep them set: {K(n)} equal strides must end on {RiserFace(turn.LastLine)}",
                $"equal goings stepped straight across. The line itself is {whole}; L / {K(n)} = {N(length / n)} is a little more than the stride, for a chord is shorter than its arc", Published.Dividers,
                new Measure(datum, step.GoingChord, "with the dividers, up the stair", "stride")),
        };
    }

    private static Instruction Narrow(StairPlan plan, TurnPlan turn, int j, double along)
    {
        var n = turn.Steps.Length;
        var side = plan.Job.Practice.Newel;
        var whole = turn.Steps.Sum(s => s.NarrowAlongFaces);
        var past = Math.Max(turn.FirstRiser, turn.LastRiser) > side / 2 + Tolerance.Same ? "; the jog from the string's face to the newel's is not counted" : "";
        var why = turn.Method == "radiating"
            ? "where the radiating line leaves the newel; the wedge of newel between two risers is the narrow end"
            : $"equal narrow ends: M = {N(side)} + {N(turn.FirstRiser)} + {N(turn.LastRiser)} = {N(whole)} along the newel's two faces{past}; {K(j)} × M / {K(n)} = {N(along)}";
        return How("mark the riser's narrow end", why, turn.Method == "radiating" ? "" : Published.NarrowEnds,
            new Measure($"{RiserFace(turn.FirstLine)}, along the newel's faces,", along, RoundArris(plan, turn, along) ? "up the stair and round the arris" : "up the stair", "narrow ends"));
    }

    private static bool RoundArris(StairPlan plan, TurnPlan turn, double along) => along > turn.FirstRiser + plan.Job.Practice.Newel / 2 + 0.01;

    /// <summary>The short arc the dividers strike.</summary>
    private static Path2 Arc(Point2 from, Point2 to)
    {
        var (radius, direction) = (from.DistanceTo(to), (to - from).Direction);
        var turn = Tick / radius;
        return new([new(from + radius * Vector2.At(direction - turn), Angle.Tan(turn / 2)), new(from + radius * Vector2.At(direction + turn))], false);
    }
}
