using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Turns;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>The tapered risers, one after another: the dividers along the walking line, the narrow end on the newel, then joined and produced.</summary>
internal static class PlanTurn
{
    private const double Tick = 25; // either side of a mark, mm of timber

    public static IEnumerable<Stage> Of(PlanView view)
    {
        var plan = view.Stair.Plan;
        var stages = new List<Stage>();
        foreach (var turn in plan.Turns)
        {
            var (along, wide) = (0.0, 0.0);
            for (var j = 1; j < turn.Steps.Length; j++)
            {
                along += turn.Steps[j - 1].NarrowAlongFaces;
                wide += turn.Steps[j - 1].Wide;
                stages.AddRange(Riser(view, turn, j, along, wide));
            }
        }
        return stages;
    }

    private static IEnumerable<Stage> Riser(PlanView view, TurnPlan turn, int j, double along, double wide)
    {
        var (plan, words) = (view.Stair.Plan, new PlanWords(view));
        var (start, k) = (TurnPlaces.FirstSquare(turn), TurnPlaces.FirstSquare(turn) + j);
        var (riser, before) = (plan.Riser(k), plan.Riser(k - 1));
        var (near, far) = (TurnPlaces.Near(plan, turn, riser), TurnPlaces.Far(plan, turn, riser));
        var id = ThingId.Riser(k);
        var draft = new StageDraft($"plan-turn-{K(k)}", Bench.Plan, PlanGround.Subject, $"Plan: tapered riser {K(k)}");
        draft.Faint("step", $"going of step {K(k - 1)}", id, [Arc(before.Walking, riser.Walking)], Stepped(plan, turn, turn.Steps[j - 1]));
        var into = Tick * (near - far).Unit;
        draft.Faint("narrow", $"narrow end of step {K(k - 1)}", id, [Path2.Polyline(near - into, near + into)], Narrow(plan, words, turn, j, along));
        draft.LinedIn("face", Say.Riser(k), id, [plan.FaceOf(riser)], Proved(How(
            $"join the mark on the {(IsOnNewel(plan, turn, near) ? "newel" : words.NearString(turn))} to the mark on the walking line, and produce the line to the {words.FarString(turn)}'s face",
            $"two points fix the riser's face; the wall must answer: the wide ends so far come to {plan.Units.Print(wide)}. If it does not, step again", "",
            new Measure($"{RiserFace(start)}, along the {words.FarString(turn)}'s face{Round(turn, far)},", wide, "to where it arrives", "wide ends"))));
        return draft.Done();
    }

    private static Instruction Proved(Instruction how) => how with { Proves = true };

    private static bool IsOnNewel(StairPlan plan, TurnPlan turn, Point2 near)
    {
        var reach = plan.Job.Practice.Newel / 2 + Tolerance.Same;
        return turn.Frame.Local(near) is var p && Math.Abs(p.X) <= reach && Math.Abs(p.Y) <= reach;
    }

    private static string Round(TurnPlan turn, Point2 far)
    {
        var p = turn.Frame.Local(far);
        var passed = p.Y < turn.Site.OuterFace - 0.01 && p.X > 0 ? 0 : turn.Site.Quarters == 2 && p.Y < turn.Site.OuterFace - 0.01 ? 2 : 1;
        return passed switch { 0 => "", 1 => " and round the corner", _ => " and round both corners" };
    }

    private static Instruction Stepped(StairPlan plan, TurnPlan turn, TaperedStep step)
    {
        var (n, quarters) = (turn.LastLine - turn.FirstLine, turn.Site.Quarters);
        var length = TurnPlaces.WalkingLength(turn);
        var datum = $"{RiserFace(step.Number)}, on the walking line,";
        var whole = $"L = {plan.Units.Print(turn.FirstRiser)} + {(quarters == 1 ? "π/2" : "π")} × {plan.Units.Print(turn.WalkingRadius)} + {plan.Units.Print(turn.LastRiser)} = {plan.Units.Print(length)}";
        if (turn.Method.StartsWith("balanced", StringComparison.Ordinal))
        {
            return How("mark the point on the walking line with the dividers, set once for all of them",
                $"balanced: steps of the turn and of the flights are {plan.Units.Print(step.GoingChord)} alike on the walking line, straight across", Published.Dividers,
                new Measure(datum, step.GoingChord, "with the dividers, up the stair", "stride"));
        }
        return turn.Method switch
        {
            "equal-arcs" => How("mark the point on the walking line", $"equal goings along the line: {whole}; L / {K(n)} = {plan.Units.Print(step.GoingArc)}", "",
                new Measure(datum, step.GoingArc, "along the line, up the stair", "going")),
            "radiating" => How("mark the point on the walking line with the dividers",
                $"the risers radiate at equal angles of {K(90 * quarters)} / {K(n)} = {Number.Print(90.0 * quarters / n)}° from one centre, {plan.Units.Print(turn.FirstRiser)} and {plan.Units.Print(turn.LastRiser)} off the newel's centre lines; this is where the riser crosses the walking line", "",
                new Measure(datum, step.GoingChord, "straight across, up the stair", "going")),
            _ => How($"strike an arc over the walking line with the dividers; keep them set: {K(n)} equal strides must end on {RiserFace(turn.LastLine)}",
                $"equal goings stepped straight across. The line itself is {whole}; L / {K(n)} = {plan.Units.Print(length / n)} is a little more than the stride, for a chord is shorter than its arc", Published.Dividers,
                new Measure(datum, step.GoingChord, "with the dividers, up the stair", "stride")),
        };
    }

    private static Instruction Narrow(StairPlan plan, PlanWords words, TurnPlan turn, int j, double along)
    {
        var (n, quarters) = (turn.Steps.Length, turn.Site.Quarters);
        var side = plan.Job.Practice.Newel;
        var whole = turn.Steps.Sum(s => s.NarrowAlongFaces);
        var faces = quarters == 1 ? "two faces" : "three faces";
        var past = Math.Max(turn.FirstRiser, turn.LastRiser) > side / 2 + Tolerance.Same ? "; the jog from the string's face to the newel's is not counted" : "";
        var start = $"{RiserFace(TurnPlaces.FirstSquare(turn))}, along {(TurnPlaces.FirstSquare(turn) < turn.FirstLine ? $"the {words.NearString(turn)}'s face and the newel's faces" : "the newel's faces")},";
        var why = turn.Method switch
        {
            "radiating" => "where the radiating line leaves the newel; the wedge of newel between two risers is the narrow end",
            _ when turn.Method.StartsWith("balanced", StringComparison.Ordinal) =>
                $"{TurnCatalogue.Find(turn.Method)?.Title ?? turn.Method}; the {K(n)} narrow ends come to {plan.Units.Print(whole)} along the faces, the jog from the string's face to the newel's not counted; the last one before this line is {plan.Units.Print(turn.Steps[j - 1].NarrowAlongFaces)}",
            _ => $"equal narrow ends: M = {(quarters == 1 ? "" : $"{K(quarters)} × ")}{plan.Units.Print(side)} + {plan.Units.Print(turn.FirstRiser)} + {plan.Units.Print(turn.LastRiser)} = {plan.Units.Print(whole)} along the newel's {faces}{past}; {K(j)} × M / {K(n)} = {plan.Units.Print(along)}",
        };
        return How("mark the riser's narrow end", why, turn.Method == "radiating" ? "" : Published.NarrowEnds,
            new Measure(start, along, Arrises(plan, turn, along) switch { 0 => "up the stair", 1 => "up the stair and round the arris", _ => "up the stair and round both arrises" }, "narrow ends"));
    }

    /// <summary>How many arrises of the newel lie between the first square riser and a place along the narrow line.</summary>
    private static int Arrises(StairPlan plan, TurnPlan turn, double along)
    {
        var side = plan.Job.Practice.Newel;
        var past = along - turn.FirstRiser - (turn.FirstLine - TurnPlaces.FirstSquare(turn)) * plan.Going - side / 2;
        return past <= 0.01 ? 0 : turn.Site.Quarters == 1 || past <= side + 0.01 ? 1 : 2;
    }

    /// <summary>The short arc the dividers strike.</summary>
    private static Path2 Arc(Point2 from, Point2 to)
    {
        var (radius, direction) = (from.DistanceTo(to), (to - from).Direction);
        var turn = Tick / radius;
        return new([new(from + radius * Vector2.At(direction - turn), Angle.Tan(turn / 2)), new(from + radius * Vector2.At(direction + turn))], false);
    }
}
