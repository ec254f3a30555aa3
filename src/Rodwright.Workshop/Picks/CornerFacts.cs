using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>A corner of the room, on the far side of a turn.</summary>
internal static class CornerFacts
{
    /// <summary>Which of the stair's corners has an id; -1 for none.</summary>
    public static int Find(StairPlan plan, string id) => TurnPlaces.Corners(plan).Select(c => c.Id).ToList().IndexOf(id);

    public static Pick Pick(PickBench bench, string id, int index)
    {
        var plan = bench.Plan;
        var corners = TurnPlaces.Corners(plan);
        var title = corners.Length == 1 ? "corner of the room" : $"{TurnWords.Ordinal(index)} corner of the room";
        var far = !plan.IsInner(corners[index].Turn);
        var meeting = plan.Strings.Where(s => s.Inner == far && Touches(s, corners[index].At)).ToList();
        var kind = meeting.Count == 2 ? meeting[0].IsWall ? "where the two wall strings meet" : "where the two strings meet" : "where the faces of the far side meet";
        IEnumerable<string> cuts = bench.Kit.Parts.Where(p => meeting.Exists(m => m.Id == p.Id)).SelectMany(p => p.Cuts.Where(c => c.Kind is CutKind.CornerHousing or CutKind.Dovetail).Select(c => ThingId.Of(p, c)));
        return Draft.Pick(id, title, kind, [.. meeting.Select(s => s.Id), .. cuts], All(bench, index));
    }

    private static bool Touches(StringSite site, Point2 corner) => site.Face.At(site.Lower.At).DistanceTo(corner) < 1 || site.Face.At(site.Upper.At).DistanceTo(corner) < 1;

    private static IEnumerable<Fact> All(PickBench bench, int index)
    {
        var plan = bench.Plan;
        var corners = TurnPlaces.Corners(plan);
        var (turn, at, _) = corners[index];
        var own = TurnPlaces.Corners(turn);
        var first = own[0] == at;
        if (first)
        {
            var from = turn.Index == 0 ? TurnPlaces.Far(plan, turn, plan.Riser(1)) : corners[index - 1].At;
            yield return bench.Mm(turn.Index == 0 ? "from the first riser along the wall string" : "from the corner below it, along the flight", (at - from).Dot(plan.Flights[turn.Index].Along),
                Why.Rule("the goings before, the offset, half the inner string and the clear width"), Why.Width, Flight(plan, plan.Flights[turn.Index]));
        }
        if (own.Length == 2)
        {
            yield return bench.Mm("across the turn to its other corner", own[0].DistanceTo(own[1]), Why.Rule("both flights' widths, and what stands between them"), Why.Width,
                Working.Of(2) * LandingFacts.Reach(plan, turn) + turn.Site.Between);
        }
        if (own[^1] == at)
        {
            var last = turn.Index == plan.Turns.Length - 1;
            var to = last ? TurnPlaces.Far(plan, turn, plan.Riser(plan.Risers)) : corners[index + 1].At;
            yield return bench.Mm(last ? "on to the last riser" : "on to the next corner, along the flight", (to - at).Dot(plan.Flights[turn.Index + 1].Along),
                Why.Rule("the clear width, half the inner string, the offset and the goings after"), Why.Width, Flight(plan, plan.Flights[turn.Index + 1]));
        }
        if (plan.Strings.Where(s => s.Upper.Kind == StringEndKind.CornerThrough).FirstOrDefault(s => s.Face.At(s.Upper.At).DistanceTo(at) < 1) is { } through)
        {
            yield return bench.Given("practice.corner", bench.Practice.Corner);
            yield return bench.Mm("lower string runs on past it", through.Thickness, Why.Rule("the lower wall string runs through behind the other to the wall"), "practice.wallString.thickness");
        }
    }

    /// <summary>A flight from corner to corner, or from the end of the stair.</summary>
    private static Working Flight(StairPlan plan, FlightPlan flight)
    {
        var goings = Working.Of(flight.Goings) * plan.Going;
        if (flight.Index > 0) goings = LandingFacts.Reach(plan, plan.Turns[flight.Index - 1]) + plan.Turns[flight.Index - 1].LastRiser + goings;
        return flight.Index < plan.Turns.Length ? goings + plan.Turns[flight.Index].FirstRiser + LandingFacts.Reach(plan, plan.Turns[flight.Index]) : goings;
    }
}
