using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>Centre lines of the strings that have newels, the newels on them, and the strings between.</summary>
internal static class PlanNewels
{
    public static IEnumerable<Stage> Of(PlanView view)
    {
        var (plan, job, words) = (view.Stair.Plan, view.Stair.Job, new PlanWords(view));
        if (plan.Newels.IsEmpty) return [];
        var draft = new StageDraft("plan-newels", Bench.Plan, PlanGround.Subject,
            plan.Strings.Any(s => !s.IsWall) ? $"Plan: {words.InnerString} centre lines and newels" : "Plan: inner strings' centre lines and newels");
        PlanCentreLines.Add(view, words, draft);
        var half = job.Practice.Newel / 2;
        foreach (var site in plan.Newels)
        {
            var outline = view.Newels.First(n => n.Part.Id == site.Id).Outline;
            draft.LinedIn(site.Id, site.Name, site.Id, [outline], How(
                $"line in the {site.Name} square about its centre", Why(plan, site), site.Role == NewelRole.Turn ? "" : Published.RiserOnNewel,
                [.. Place(plan, words, site), new Measure("its centre", half, "to each of its four faces", "half side")]));
        }
        foreach (var site in plan.Strings.Where(s => !s.IsWall))
        {
            var outline = view.Strings.First(s => s.Part.Id == site.Id).Outline;
            var between = site.Lower.Kind == StringEndKind.Newel && site.Upper.Kind == StringEndKind.Newel;
            draft.LinedIn(site.Id, site.Name, site.Id, [outline], How(
                $"line in both faces of the {site.Name} {(between ? "between its newels" : "from its newel to the corner")}", $"the string's centre line runs {Through(plan, site)}: half of {plan.Units.Print(site.Thickness)} either side", "",
                new Measure("the string's centre line", site.Thickness / 2, "to either side", "half thickness")));
        }
        return draft.Done();
    }

    private static string Through(StairPlan plan, StringSite site) =>
        plan.Turns.Any(t => t.Site.InnerFace > site.Thickness / 2 + Tolerance.Joint && (t.Newels.Contains(site.Lower.Newel) || t.Newels.Contains(site.Upper.Newel)))
            ? "into the newels, beside the centre of the one both flights share" : "through the newels' centres";

    /// <summary>Where a newel stands along its flight: from the newel of the turn next to it, or from the first riser's mark.</summary>
    private static IEnumerable<Measure> Place(StairPlan plan, PlanWords words, NewelSite site)
    {
        if (plan.TurnAt(site.Id) is { } own)
        {
            if (own.Newels.Length == 2 && site.Id == own.Newels[1])
                yield return new("the lower newel's centre", own.Site.Between, $"{words.Climbing(-1 * own.Frame.Across)}, square to the flight", "between the newels");
            else if (own.Site.Quarters == 2)
            {
                // No two centre lines cross at it: how far along it stands is measured from beyond the turn.
                var thick = plan.IsInner(own) ? plan.OuterThickness : plan.InnerThickness;
                yield return new("the wall's face across the turn", own.Site.OuterFace + thick, words.Climbing(-1 * own.Frame.Along), "from the wall across");
            }
            else if (own.Index > 0)
            {
                var (flight, before) = (plan.Flights[own.Index], plan.Turns[own.Index - 1]);
                yield return new($"{TurnWords.Newel(plan, before, last: true)}'s centre{Across(plan, before, own)}, along the flight,",
                    (TurnPlaces.Newel(own, false) - TurnPlaces.Newel(before, true)).Dot(flight.Along), words.Climbing(flight.Along), "from newel to newel");
            }
            yield break;
        }
        if (site.Role == NewelRole.Corner)
        {
            var corner = TurnPlaces.OfCorner(plan, site);
            var newel = TurnPlaces.Newel(corner, last: corner.Frame.Local(site.Centre).X < 0);
            var to = site.Centre - newel;
            foreach (var way in new[] { corner.Frame.Across, corner.Frame.Along })
                yield return new($"{TurnWords.Newel(plan, corner, corner.Frame.Local(site.Centre).X < 0)}'s centre", Math.Abs(to.Dot(way)), words.Climbing(Math.Sign(to.Dot(way)) * way), way == corner.Frame.Across ? "across" : "along");
            yield break;
        }
        var bottom = site.Role == NewelRole.Bottom;
        var turn = bottom ? plan.Turns.FirstOrDefault() : plan.Turns.LastOrDefault();
        if (turn is null)
        {
            yield return new("the first riser's mark, along the centre line,", site.Centre.Y - plan.Riser(1).Inner.Y,
                bottom && plan.RiserAtFoot(site.Inner) == 1 ? "up the page, that is on the mark itself" : "up the page", "from riser 1");
            yield break;
        }
        var along = (bottom ? plan.Flights[0] : plan.Flights[^1]).Along;
        var from = TurnPlaces.Newel(turn, last: !bottom);
        var same = plan.IsInner(turn) == site.Inner;
        yield return new($"{TurnWords.Newel(plan, turn, last: !bottom)}'s centre, {(same ? "along the centre line" : "squared across the flight to this string's centre line")},",
            Math.Abs((site.Centre - from).Dot(along)), words.Climbing(bottom ? -1 * along : along), "from turn newel");
    }

    private static string Across(StairPlan plan, TurnPlan before, TurnPlan own) => plan.IsInner(before) == plan.IsInner(own) ? "" : ", squared across the flight";

    private static string Why(StairPlan plan, NewelSite site)
    {
        if (plan.TurnAt(site.Id) is { } turn)
        {
            var why = turn.Newels.Length == 2 ? "each flight's string ends in a newel of its own; between them is the open well"
                : turn.Site.Quarters == 1 ? "the turn's newel stands where the centre lines of the two inner strings cross"
                : "both flights' inner strings end in the one newel, which stands midway between their centre lines";
            return turn.Index == 0 || (turn.Newels.Length == 2 && site.Id == turn.Newels[1]) ? why : $"{why}; {Run(plan, turn)}";
        }
        if (site.Role == NewelRole.Corner) return "the outside of the turn is open: both strings there end in a newel of its own, which takes no risers";
        var bottom = site.Role == NewelRole.Bottom;
        var rounded = bottom && plan.RiserAtFoot(site.Inner) == 2;
        var face = $"the {(rounded ? "second" : bottom ? "first" : "last")} riser's face lies on this newel's centre{(rounded ? ", which stands back behind the rounded end of the bottom step" : "")}";
        if (plan.Turns.IsEmpty) return face;
        var (e, n) = bottom ? (plan.Turns[0].FirstRiser, plan.Flights[0].Goings - (rounded ? 1 : 0)) : (plan.Turns[^1].LastRiser, plan.Flights[^1].Goings);
        return $"{face}: {plan.Units.Print(e)} + {K(n)} × {plan.Units.Print(plan.Going)} = {plan.Units.Print(e + n * plan.Going)}";
    }

    /// <summary>From newel to newel along a flight between two turns.</summary>
    private static string Run(StairPlan plan, TurnPlan turn)
    {
        var (a, n, b) = (plan.Turns[turn.Index - 1].LastRiser, plan.Flights[turn.Index].Goings, turn.FirstRiser);
        return $"along the flight {plan.Units.Print(a)} + {K(n)} × {plan.Units.Print(plan.Going)} + {plan.Units.Print(b)} = {plan.Units.Print(a + n * plan.Going + b)}";
    }
}
