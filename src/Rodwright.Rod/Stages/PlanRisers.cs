using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>The square risers of the plan and the walking line.</summary>
internal static class PlanRisers
{
    public static IEnumerable<Stage> Of(PlanView view) => [.. Ends(view), .. Goings(view), .. Walking(view)];

    public static Path2 Face(RiserLine riser) => Path2.Polyline(riser.Inner, riser.Outer);

    private static IEnumerable<Stage> Ends(PlanView view)
    {
        var (plan, words, job) = (view.Stair.Plan, new PlanWords(view), view.Stair.Job);
        var draft = new StageDraft("plan-ends", Bench.Plan, PlanGround.Subject, "Plan: first and last riser of each flight");
        if (plan.Turn is not { } turn)
        {
            Line(1, How("draw the first riser's face square across the stair, through its mark", "it is the datum all goings are measured from", "",
                new Measure($"the {words.OuterString}'s face", plan.ClearWidth, $"{words.In}, to the {words.InnerString}'s face", "across")));
            var all = (plan.Risers - 1) * plan.Going;
            Line(plan.Risers, How("draw the last riser's face parallel", $"all goings at once, so that no error adds up: {K(plan.Risers - 1)} × {N(plan.Going)} = {N(all)}", "",
                new Measure(RiserFace(1), all, "up the page", "goings")));
            return draft.Done();
        }
        var (first, second) = (plan.Outer.Edges[0].Along, plan.Outer.Edges[1].Along);
        var decided = $"how far it stands off the newel's centre was decided by: {turn.DecidedBy}";
        Line(turn.FirstLine, How("draw the turn's first riser square across the lower flight", decided, Published.NarrowEnds,
            new Measure("the turn newel's centre line across the flight", turn.FirstRiser, turn.FirstRiser > 0 ? words.Climbing(-1 * first) : "off it, that is on the line itself", "offset")));
        if (turn.FirstLine > 1) Line(1, How("draw the first riser's face parallel", $"all goings at once: {K(job.Layout.GoingsBefore)} × {N(plan.Going)}; it must pass through the bottom newel's centre", Published.RiserOnNewel,
            new Measure(RiserFace(turn.FirstLine), job.Layout.GoingsBefore * plan.Going, words.Climbing(-1 * first), "goings")));
        Line(turn.LastLine, How("draw the turn's last riser square across the upper flight", decided, Published.NarrowEnds,
            new Measure("the turn newel's other centre line", turn.LastRiser, turn.LastRiser > 0 ? words.Climbing(second) : "off it, that is on the line itself", "offset")));
        if (turn.LastLine < plan.Risers) Line(plan.Risers, How("draw the last riser's face parallel", $"all goings at once: {K(job.Layout.GoingsAfter)} × {N(plan.Going)}; it must pass through the top newel's centre", Published.RiserOnNewel,
            new Measure(RiserFace(turn.LastLine), job.Layout.GoingsAfter * plan.Going, words.Climbing(second), "goings")));
        return draft.Done();

        void Line(int k, Instruction how) => draft.LinedIn($"riser-{K(k)}", Say.Riser(k), ThingId.Riser(k), [Face(plan.Riser(k))], how);
    }

    private static IEnumerable<Stage> Goings(PlanView view)
    {
        var (plan, words) = (view.Stair.Plan, new PlanWords(view));
        var draft = new StageDraft("plan-goings", Bench.Plan, PlanGround.Subject, "Plan: goings of the straight steps");
        Flight(1, plan.Turn?.FirstLine ?? plan.Risers, 0);
        if (plan.Turn is { } turn) Flight(turn.LastLine, plan.Risers, 1);
        return draft.Done();

        void Flight(int from, int to, int edge)
        {
            var way = plan.Turn is null ? "up the page" : words.Climbing(plan.Outer.Edges[edge].Along);
            var once = new Telling(
                $"goings-{K(from)}", "risers",
                $"from {RiserFace(from)} measure each distance of the table {way}, along the {words.OuterString}'s face, and again along the {words.InnerString}'s; join the marks and draw the riser's face",
                $"going {N(plan.Going)}; measured from one datum, so that errors do not add up");
            for (var k = from + 1; k < to; k++)
            {
                draft.LinedIn($"riser-{K(k)}", Say.Riser(k), ThingId.Riser(k), [Face(plan.Riser(k))], How(
                    "draw the riser's face square across", $"{K(k - from)} × {N(plan.Going)} = {N((k - from) * plan.Going)}, measured from one datum so that errors do not add up", "",
                    new Measure(RiserFace(from), (k - from) * plan.Going, way, $"from {Riser(from)}")), once);
            }
        }
    }

    private static IEnumerable<Stage> Walking(PlanView view)
    {
        var (plan, words) = (view.Stair.Plan, new PlanWords(view));
        var draft = new StageDraft("plan-walking", Bench.Plan, PlanGround.Subject, "Plan: the walking line");
        var inset = plan.WalkingRadius - plan.InnerThickness / 2;
        var middle = Math.Abs(inset - plan.ClearWidth / 2) < 0.01;
        var why = (middle ? $"the middle of the clear width: {N(plan.ClearWidth)} / 2 = {N(inset)} from the string's face" : $"{N(inset)} from the {words.InnerString}'s face")
            + $", and half the string: {N(inset)} + {N(plan.InnerThickness)} / 2 = {N(plan.WalkingRadius)}";
        draft.LinedIn("line", "walking line", ThingId.WalkingLine, [plan.WalkingLine], How(
            plan.Turn is null
                ? "draw the walking line parallel, from the first riser to the last"
                : $"draw it parallel up both flights, and join them with a quarter circle: compasses on the turn newel's centre, set to {N(plan.WalkingRadius)}",
            why, plan.Regulation.Title,
            new Measure($"the {words.InnerString}'s centre line", plan.WalkingRadius, $"{words.Out}, towards the {(words.HasOuterWall ? "wall" : "other string")}", "across")));
        return draft.Done();
    }
}
