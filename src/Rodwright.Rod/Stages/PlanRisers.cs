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

    public static Path2 Face(StairPlan plan, int riser) => plan.FaceOf(plan.Riser(riser));

    private static IEnumerable<Stage> Ends(PlanView view)
    {
        var (plan, words) = (view.Stair.Plan, new PlanWords(view));
        var draft = new StageDraft("plan-ends", Bench.Plan, PlanGround.Subject, "Plan: first and last riser of each flight");
        if (plan.Turns.IsEmpty)
        {
            Line(1, How("draw the first riser's face square across the stair, through its mark", "it is the datum all goings are measured from", "",
                new Measure($"the {words.OuterString}'s face", plan.ClearWidth, $"{words.In}, to the {words.InnerString}'s face", "across")));
            var all = (plan.Risers - 1) * plan.Going;
            Line(plan.Risers, How("draw the last riser's face parallel", $"all goings at once, so that no error adds up: {K(plan.Risers - 1)} × {plan.Units.Print(plan.Going)} = {plan.Units.Print(all)}", "",
                new Measure(RiserFace(1), all, "up the page", "goings")));
            return draft.Done();
        }
        var drawn = new HashSet<int>();
        foreach (var turn in plan.Turns)
        {
            var (first, last) = (TurnPlaces.FirstSquare(turn), TurnPlaces.LastSquare(turn));
            if (drawn.Add(first)) Line(first, AtTurn(plan, words, turn, last: false));
            if (turn.Index == 0 && first > 1 && drawn.Add(1)) Line(1, Far(plan, words, "first", first, 1, plan.Flights[0], -1));
            if (drawn.Add(last)) Line(last, AtTurn(plan, words, turn, last: true));
            if (turn.Index == plan.Turns.Length - 1 && last < plan.Risers && drawn.Add(plan.Risers)) Line(plan.Risers, Far(plan, words, "last", last, plan.Risers, plan.Flights[^1], 1));
        }
        return draft.Done();

        void Line(int k, Instruction how) => draft.LinedIn($"riser-{K(k)}", Say.Riser(k), ThingId.Riser(k), [Face(plan, k)], how);
    }

    /// <summary>The square riser next to a turn, from the newel's centre line; steps that share the taper lie between.</summary>
    private static Instruction AtTurn(StairPlan plan, PlanWords words, TurnPlan turn, bool last)
    {
        var (e, shared) = last ? (turn.LastRiser, TurnPlaces.LastSquare(turn) - turn.LastLine) : (turn.FirstRiser, turn.FirstLine - TurnPlaces.FirstSquare(turn));
        var flight = plan.Flights[turn.Index + (last ? 1 : 0)];
        var whole = e + shared * plan.Going;
        var decided = $"how far it stands off the newel's centre was decided by: {turn.DecidedBy}"
            + (shared == 0 ? "" : $"; {K(shared)} straight {(shared == 1 ? "step shares" : "steps share")} the taper: {plan.Units.Print(e)} + {K(shared)} × {plan.Units.Print(plan.Going)} = {plan.Units.Print(whole)}");
        var name = $"{TurnWords.Newel(plan, turn, last)}'s {(last && turn.Newels.Length == 1 && turn.Site.Quarters == 1 ? "other centre line" : "centre line across the flight")}";
        var where = turn.FirstLine == turn.LastLine ? "" : shared > 0 ? $"the {(last ? "first" : "last")} square riser {(last ? "above" : "below")} {TurnWords.The(plan, turn)}" : $"{TurnWords.The(plan, turn)}'s {(last ? "last" : "first")} riser";
        var way = words.Climbing((last ? 1 : -1) * (whole >= 0 ? 1 : -1) * flight.Along);
        return How($"draw {where} square across the {TurnWords.Flight(plan, flight.Index)}", decided, Published.NarrowEnds,
            new Measure(name, Math.Abs(whole), Math.Abs(whole) > 0.05 ? way : "off it, that is on the line itself", "offset"));
    }

    /// <summary>The stair's own first or last riser, all goings at once.</summary>
    private static Instruction Far(StairPlan plan, PlanWords words, string which, int from, int to, FlightPlan flight, int sense)
    {
        var goings = Math.Abs(to - from);
        var newel = plan.Newels.Any(n => n.Role == (sense < 0 ? NewelRole.Bottom : NewelRole.Top) && (sense > 0 || plan.RiserAtFoot(n.Inner) == 1)) ? $"; it must pass through the {(sense < 0 ? "bottom" : "top")} newel's centre" : "";
        return How($"draw the {which} riser's face parallel", $"all goings at once: {K(goings)} × {plan.Units.Print(plan.Going)}{newel}", Published.RiserOnNewel,
            new Measure(RiserFace(from), goings * plan.Going, words.Climbing(sense * flight.Along), "goings"));
    }

    private static IEnumerable<Stage> Goings(PlanView view)
    {
        var (plan, words) = (view.Stair.Plan, new PlanWords(view));
        var draft = new StageDraft("plan-goings", Bench.Plan, PlanGround.Subject, "Plan: goings of the straight steps");
        foreach (var flight in plan.Flights)
        {
            var from = flight.Index == 0 ? 1 : TurnPlaces.LastSquare(plan.Turns[flight.Index - 1]);
            var to = flight.Index == plan.Turns.Length ? plan.Risers : TurnPlaces.FirstSquare(plan.Turns[flight.Index]);
            Flight(from, to, words.Climbing(flight.Along), words.String(flight, near: false), words.String(flight, near: true));
        }
        return draft.Done();

        void Flight(int from, int to, string way, string one, string other)
        {
            var once = new Telling(
                $"goings-{K(from)}", "risers",
                $"from {RiserFace(from)} measure each distance of the table {way}, along the {one}'s face, and again along the {other}'s; join the marks and draw the riser's face",
                $"going {plan.Units.Print(plan.Going)}; measured from one datum, so that errors do not add up");
            for (var k = from + 1; k < to; k++)
            {
                draft.LinedIn($"riser-{K(k)}", Say.Riser(k), ThingId.Riser(k), [Face(plan, k)], How(
                    "draw the riser's face square across", $"{K(k - from)} × {plan.Units.Print(plan.Going)} = {plan.Units.Print((k - from) * plan.Going)}, measured from one datum so that errors do not add up", "",
                    new Measure(RiserFace(from), (k - from) * plan.Going, way, $"from {Riser(from)}")), once);
            }
        }
    }

    private static IEnumerable<Stage> Walking(PlanView view)
    {
        var (plan, words) = (view.Stair.Plan, new PlanWords(view));
        var draft = new StageDraft("plan-walking", Bench.Plan, PlanGround.Subject, "Plan: the walking line");
        var first = plan.Turns.FirstOrDefault();
        var near = first is null || plan.IsInner(first);
        var (thickness, side) = near ? (plan.InnerThickness, words.InnerString) : (plan.OuterThickness, words.OuterString);
        var across = plan.WalkingRadius - plan.InnerThickness / 2 + thickness / 2;
        var inset = across - thickness / 2;
        var middle = Math.Abs(inset - plan.ClearWidth / 2) < 0.01;
        var why = (middle ? $"the middle of the clear width: {plan.Units.Print(plan.ClearWidth)} / 2 = {plan.Units.Print(inset)} from the string's face" : $"{plan.Units.Print(inset)} from the {side}'s face")
            + $", and half the string: {plan.Units.Print(inset)} + {plan.Units.Print(thickness)} / 2 = {plan.Units.Print(across)}";
        draft.LinedIn("line", "walking line", ThingId.WalkingLine, [plan.WalkingLine], How(Act(), why, plan.Regulation.Title,
            new Measure($"the {side}'s centre line", across, near ? $"{words.Out}, towards the {(words.HasOuterWall ? "wall" : "other string")}" : $"{words.In}, towards the other string", "across")));
        return draft.Done();

        string Act()
        {
            if (first is null) return "draw the walking line parallel, from the first riser to the last";
            if (plan.Turns.Length == 1)
            {
                return first.Site switch
                {
                    { Quarters: 1 } => $"draw it parallel up both flights, and join them with a quarter circle: compasses on the turn newel's centre, set to {plan.Units.Print(first.WalkingRadius)}",
                    { Between: > 0 } => $"draw it parallel up both flights, and join them with a quarter circle about each newel's centre, compasses set to {plan.Units.Print(first.WalkingRadius)}, and a straight line between the two",
                    _ => $"draw it parallel up both flights, and join them with a half circle: compasses on the turn newel's centre, set to {plan.Units.Print(first.WalkingRadius)}",
                };
            }
            var radii = plan.Turns.Select(t => plan.Units.Print(t.WalkingRadius)).Distinct().ToList();
            var kinds = plan.Turns.Any(t => t.Site.Quarters == 2) ? plan.Turns.Any(t => t.Site.Quarters == 1) ? "a quarter or half circle" : "a half circle" : "a quarter circle";
            return $"draw it parallel up every flight, as far from the newel's side, and join them at each turn with {kinds}: compasses on that turn's newel, set to {string.Join(" and ", radii)}";
        }
    }
}
