using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>A newel.</summary>
internal static class NewelPick
{
    public static Pick? Of(PickBench bench, string id)
    {
        if (bench.Part(id) is not { Kind: PartKind.Newel } part || bench.Plan.Newels.FirstOrDefault(n => n.Id == id) is not { } site) return null;
        return Draft.Pick(id, part.Name, $"newel, mark {part.Mark}", Relations.Framed(bench, id), [.. Sizes(bench, part, site), .. Place(bench, site)]);
    }

    /// <summary>Where its centre stands.</summary>
    public static IEnumerable<Fact> Place(PickBench bench, NewelSite site)
    {
        var plan = bench.Plan;
        if (plan.TurnAt(site.Id) is { } own)
        {
            if (site.Id == own.Newels[0]) yield return bench.Mm("first riser outside its centre line", own.FirstRiser, Why.Rule($"what decided it: {own.DecidedBy}"), Why.Steps);
            if (site.Id == own.Newels[^1])
                yield return bench.Mm(own.Newels.Length == 1 ? "last riser outside its other centre line" : "last riser outside its centre line", own.LastRiser, Why.Rule($"what decided it: {own.DecidedBy}"), Why.Steps);
            if (own.Newels.Length == 2) yield return bench.Mm("from the other newel of the turn", own.Site.Between, Why.Rule("the width of the well, between the strings' centre lines"), Why.Steps);
            if (own.Index > 0 && site.Id == own.Newels[0])
            {
                var (before, flight) = (plan.Turns[own.Index - 1], plan.Flights[own.Index]);
                var along = (TurnPlaces.Newel(own, false) - TurnPlaces.Newel(before, true)).Dot(flight.Along);
                yield return bench.Mm($"{site.Name}, from the newel of the turn below, along the flight", along, Why.Rule("the turn's last riser, the goings between, and the next turn's first riser"), Why.Going,
                    Working.Of(before.LastRiser) + Working.Of(flight.Goings) * plan.Going + own.FirstRiser);
            }
            yield break;
        }
        if (site.Role == NewelRole.Corner)
        {
            var turn = TurnPlaces.OfCorner(plan, site);
            var from = TurnPlaces.Newel(turn, turn.Frame.Local(site.Centre).X < 0);
            var half = Working.Of(plan.IsInner(turn) ? plan.OuterThickness : plan.InnerThickness) / 2;
            foreach (var (words, way) in new[] { ("across", turn.Frame.Across), ("along", turn.Frame.Along) })
                yield return bench.Mm($"{site.Name}, from the turn's newel, {words}", Math.Abs((site.Centre - from).Dot(way)), Why.Rule("to the far strings' faces, and half their thickness on to the centre lines that cross there"), Why.Width, LandingFacts.Reach(plan, turn) + half);
            yield break;
        }
        var bottom = site.Role == NewelRole.Bottom;
        var rounded = bottom && plan.RiserAtFoot(site.Inner) == 2;
        if ((bottom ? plan.Turns.FirstOrDefault() : plan.Turns.LastOrDefault()) is not { } beside)
        {
            if (rounded)
                yield return bench.Mm($"{site.Name}, from the first riser's face", plan.Going, Why.Rule("the second riser's face lies on its centre line, behind the rounded end of the bottom step"), Why.Going, Working.Of(plan.Going));
            if (site.Role == NewelRole.Top)
                yield return bench.Mm($"{site.Name}, from the first riser's face", (plan.Risers - 1) * plan.Going, Why.Rule("the last riser's face lies on the top newel's centre line"), Why.Going, Working.Of(plan.Risers - 1) * plan.Going);
            yield break;
        }
        var end = bottom ? plan.Flights[0] : plan.Flights[^1];
        var e = bottom ? beside.FirstRiser : beside.LastRiser;
        var newel = beside.Newels.Length == 1 && plan.Turns.Length == 1 ? "the turn newel" : TurnWords.Newel(plan, beside, !bottom);
        yield return bench.Mm($"{site.Name}, from {newel}'s centre", Math.Abs((site.Centre - TurnPlaces.Newel(beside, !bottom)).Dot(end.Along)), Why.Rule($"the {(rounded ? "second" : bottom ? "first" : "last")} riser's face lies on its centre line"), Why.Going,
            Working.Of(e) + Working.Of(end.Goings - (rounded ? 1 : 0)) * plan.Going);
    }

    private static IEnumerable<Fact> Sizes(PickBench bench, Part part, NewelSite site)
    {
        var practice = bench.Practice;
        yield return bench.Given("practice.newel", practice.Newel);
        var foot = part.FaceSide.Frame.Origin.Z;
        var head = foot + part.Blank.Length;
        yield return bench.Mm("length", part.Blank.Length, Why.Rule("from its foot to its head"), "", Working.Of(head) - foot);
        yield return Foot(bench, part, foot);
        var rail = head - practice.RailHeight - practice.NewelAboveRail;
        yield return bench.Mm("height of its head", head, Why.Rule("the rail's height plumb above the highest pitch line or floor at its centre, and the newel above the rail"), "practice.newelAboveRail",
            Working.Of(rail) + practice.RailHeight + practice.NewelAboveRail);
        yield return bench.Mm("highest pitch line or floor at its centre", rail, Why.Rule("the line of the nosings, produced to the newel's centre; or the floor it stands at"), Why.Going, [.. Highest(bench, site)]);
        yield return bench.Given("practice.railHeight", practice.RailHeight);
        yield return Facts.Words("timber", part.Material, Why.Field("practice.timber"), "practice.timber");
        foreach (var kind in part.Cuts.GroupBy(c => c.Kind))
            yield return Facts.Count(CutWords.Many(kind.Key), kind.Count(), Why.Rule("cut in its four faces, each face set out by itself"));
    }

    private static Fact Foot(PickBench bench, Part part, double foot)
    {
        var practice = bench.Practice;
        if (Math.Abs(foot + practice.NewelBelowFloor) < 1e-9) return bench.Mm("height of its foot", foot, Why.Field("practice.newelBelowFloor"), "practice.newelBelowFloor", Working.Of(0) - practice.NewelBelowFloor);
        return bench.Mm("height of its foot", foot, Why.Rule("it hangs below its lowest joint: a string's lower edge, or a riser's housing"), "practice.topNewelDrop", Working.Of(foot + practice.TopNewelDrop) - practice.TopNewelDrop);
    }

    /// <summary>Ways its highest line may come about: each string's pitch line there, and each level.</summary>
    private static IEnumerable<Working> Highest(PickBench bench, NewelSite site)
    {
        var (plan, practice) = (bench.Plan, bench.Practice);
        foreach (var s in plan.Strings.Where(s => s.Lower.Newel == site.Id || s.Upper.Newel == site.Id))
        {
            var riser = plan.RiserLines.FirstOrDefault(r => r.Number >= s.FirstRiser && r.Number <= s.LastRiser && r.Up.Dot(s.Face.Along) > 1 - 1e-9);
            if (riser is null) continue;
            var along = s.Face.Station(site.Centre) - s.Face.Station(riser.Inner);
            yield return Working.Of(riser.Number) * plan.Rise + (Working.Of(practice.Nosing) + along) * plan.Rise / plan.Going;
        }
        for (var k = 1; k <= plan.Risers; k++) yield return Working.Of(k) * plan.Rise;
    }
}
