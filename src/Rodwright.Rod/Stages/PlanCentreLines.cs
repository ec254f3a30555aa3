using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>Centre lines of strings: in every flight one for each side that has a newel.</summary>
internal static class PlanCentreLines
{
    public static void Add(PlanView view, PlanWords words, StageDraft draft)
    {
        var (plan, past) = (view.Stair.Plan, view.Stair.Job.Practice.Newel);
        var count = 0;
        foreach (var flight in plan.Flights)
        {
            foreach (var inner in new[] { true, false })
            {
                if (Line(plan, flight, inner, past) is not { } line) continue;
                var id = plan.Turns.IsEmpty ? $"centre-{(inner ? "inner" : "outer")}" : $"centre-{K(++count)}";
                var name = plan.Turns.IsEmpty ? $"centre line, {(inner ? "inner" : "outer")} string" : $"centre line, {TurnWords.Flight(plan, flight.Index)}{(inner ? "" : ", other side")}";
                draft.Faint(id, name, ThingId.CentreLine, [line], Found(view, words, flight, inner));
            }
        }
    }

    /// <summary>The line through the newels of one side of a flight, produced past them; null where none stands there.</summary>
    private static Path2? Line(StairPlan plan, FlightPlan flight, bool inner, double past)
    {
        var before = flight.Index > 0 ? plan.Turns[flight.Index - 1] : null;
        var after = flight.Index < plan.Turns.Length ? plan.Turns[flight.Index] : null;
        var points = new List<Point2>();
        if (before is not null && plan.IsInner(before) == inner) points.Add(OnLine(plan, before, last: true));
        if (after is not null && plan.IsInner(after) == inner) points.Add(OnLine(plan, after, last: false));
        foreach (var corner in plan.Newels.Where(n => n.Role == NewelRole.Corner && n.Inner == inner))
        {
            var turn = TurnPlaces.OfCorner(plan, corner);
            var isFirst = turn.Site.Quarters == 1 || turn.Frame.Local(corner.Centre).X > 0;
            var isLast = turn.Site.Quarters == 1 || !isFirst;
            if ((turn == after && isFirst) || (turn == before && isLast)) points.Add(corner.Centre);
        }
        if (before is null) points.AddRange(Ends(NewelRole.Bottom));
        if (after is null) points.AddRange(Ends(NewelRole.Top));
        if (points.Count == 0) return null;
        var origin = points[0];
        var stations = points.Select(p => (p - origin).Dot(flight.Along)).ToList();
        return Path2.Polyline(origin + (stations.Min() - past) * flight.Along, origin + (stations.Max() + past) * flight.Along);

        IEnumerable<Point2> Ends(NewelRole role) => plan.Newels.Where(n => n.Role == role && n.Inner == inner).Select(n => n.Centre);
    }

    /// <summary>The point of a string's centre line opposite a turn's newel: its centre, or beside it where two flights share one.</summary>
    private static Point2 OnLine(StairPlan plan, TurnPlan turn, bool last)
    {
        var half = (plan.IsInner(turn) ? plan.InnerThickness : plan.OuterThickness) / 2;
        return TurnPlaces.Newel(turn, last) + (turn.Site.InnerFace - half) * TurnPlaces.Outward(turn, last && turn.Site.Quarters == 2);
    }

    private static Instruction Found(PlanView view, PlanWords words, FlightPlan flight, bool inner)
    {
        var plan = view.Stair.Plan;
        var newel = view.Stair.Job.Practice.Newel;
        var (own, other) = inner ? (plan.InnerThickness, plan.OuterThickness) : (plan.OuterThickness, plan.InnerThickness);
        var toInner = plan.IsMirrored ? flight.Along.Right : flight.Along.Left;
        var way = words.Climbing(inner ? toInner : -1 * toInner);
        var which = plan.Turns.IsEmpty ? "" : $" of the {TurnWords.Flight(plan, flight.Index)}'s";
        var turn = TurnPlaces.TurnBeside(plan, flight);
        var near = turn is null ? inner : plan.IsInner(turn) == inner;
        var name = words.String(flight, near);
        if (TurnPlaces.StringOf(plan, flight, !inner) is null or { IsWall: true } && !view.WallParts.IsEmpty)
        {
            var across = plan.ClearWidth + own / 2;
            var act = plan.Turns.IsEmpty ? "draw the newel string's centre line" : $"draw the centre line{which} {name}{(flight.Index == 0 ? "" : plan.Turns[flight.Index - 1].Site.Quarters == 2 ? ", parallel to the flight before it" : ", square to the flight before it")}";
            return How(act, $"clear width and half the string: {plan.Units.Print(plan.ClearWidth)} + {plan.Units.Print(own)} / 2 = {plan.Units.Print(across)}", "",
                new Measure(flight.Index == 0 ? inner ? "the wall string's face" : "the inner wall string's face" : $"the {TurnWords.Flight(plan, flight.Index)}'s wall string's face", across, way, "across"));
        }
        // The first centre line of a stair without walls is the datum of the whole rod.
        if (inner && flight.Index == 0)
            return How("draw the string's centre line along the rod; everything else is measured from it", "it leaves half a newel, and as much again, beside it", "", new Measure("the edge of the rod", newel, words.Climbing(-1 * toInner), "from the edge"));
        var whole = own / 2 + plan.ClearWidth + other / 2;
        return How(plan.Turns.IsEmpty ? "draw the other string's centre line" : $"draw the centre line{which} {name}", $"clear width and half of each string: {plan.Units.Print(own)} / 2 + {plan.Units.Print(plan.ClearWidth)} + {plan.Units.Print(other)} / 2", "",
            new Measure(flight.Index == 0 ? "the first centre line" : "the centre line or the string across the flight", whole, way, "across"));
    }
}
