using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>The first stages of the plan: faces of walls, wall strings, centre lines, newels and newel strings.</summary>
internal static class PlanGround
{
    public const string Subject = "plan";

    public static IEnumerable<Stage> Of(PlanView view) => [.. Walls(view), .. WallStrings(view), .. Newels(view)];

    private static IEnumerable<Stage> Walls(PlanView view)
    {
        var (plan, job, words) = (view.Stair.Plan, view.Stair.Job, new PlanWords(view));
        var draft = new StageDraft("plan-walls", Bench.Plan, Subject, "Plan: faces of the walls");
        for (var i = 0; i < view.Walls.Length; i++)
        {
            var wall = view.Walls[i];
            var name = i == 0 ? "the wall's face" : $"wall face {K(i + 1)}";
            var (id, of) = ($"wall-{K(i + 1)}", view.WallOf(i));
            if (i > 0 || !words.HasOuterWall)
            {
                var level = Math.Abs(wall.Vertices[0].At.Y - wall.Vertices[1].At.Y) < 1;
                draft.LinedIn(id, name, of, [wall], words.HasOuterWall
                    ? How("draw the inner wall's face parallel", "the stair is measured over its strings, from wall to wall", "",
                        new Measure("the wall's face", job.Width, level ? "down the page" : words.In, "width"))
                    : How("draw the wall's face, and mark the first riser's place at its foot", $"all goings: {K(plan.Risers - 1)} × {N(plan.Going)} = {N(wall.Length)}", "",
                        new Measure("the first riser's mark", wall.Length, "up the page", "length")));
                continue;
            }
            if (plan.Turn is null)
            {
                draft.LinedIn(id, name, of, [wall], How(
                    "draw the wall's face along the edge of the rod and mark the first and the last riser's places on it", $"{K(plan.Risers - 1)} goings of {N(plan.Going)}: {K(plan.Risers - 1)} × {N(plan.Going)} = {N(wall.Length)}", "",
                    new Measure("the first riser's mark", wall.Length, "up the page to the last riser's", "length")));
                continue;
            }
            var (first, second) = (plan.Outer.Edges[0], plan.Outer.Edges[1]);
            draft.LinedIn(id, name, of, [wall], How(
                "draw both walls' faces, square to one another; prove the corner with 600 on one, 800 on the other and 1000 across",
                "the stair is made square; the gap to a wall out of square is scribed on site. Everything in the turn is measured from this corner", "",
                new Measure("the corner of the room", first.Length + plan.OuterThickness, $"{words.Climbing(-1 * first.Along)}, to the first riser", "first wall"),
                new Measure("the same corner", second.Length + plan.OuterThickness, $"{words.Climbing(second.Along)}, to the last riser", "second wall")));
        }
        return draft.Done();
    }

    private static IEnumerable<Stage> WallStrings(PlanView view)
    {
        var (plan, words) = (view.Stair.Plan, new PlanWords(view));
        var draft = new StageDraft("plan-strings", Bench.Plan, Subject, "Plan: faces of the wall strings");
        foreach (var site in plan.Strings.Where(s => s.IsWall))
        {
            var part = view.Strings.First(s => s.Part.Id == site.Id);
            var edge = (site.Inner ? plan.Inner : plan.Outer).Edges.First(e => e.Carrier == site.Id);
            var away = site.Inner == view.OuterSide > 0 ? edge.Along.Right : edge.Along.Left;
            var way = words.Climbing(away);
            draft.Faint($"{site.Id}-face", $"face of the {site.Name}", site.Id, [Path2.Polyline(edge.From, edge.To)], How(
                "draw the string's face parallel to the wall", $"the string is {N(site.Thickness)} thick, and stands against the wall", "",
                new Measure("the wall's face", site.Thickness, way, "thickness")));
            draft.LinedIn($"{site.Id}-outline", site.Name, site.Id, [part.Outline], How(
                "line in the string; leave its ends to run on until it is set out in development",
                $"between the strings' faces there is {N(plan.ClearWidth)} clear: {N(view.Stair.Job.Width)} − {N(plan.OuterThickness)} − {N(plan.InnerThickness)}", "",
                new Measure("the string's face", site.Thickness, $"{words.Climbing(-1 * away)}, back to the wall", "thickness")));
        }
        return draft.Done();
    }

    private static IEnumerable<Stage> Newels(PlanView view)
    {
        var (plan, job, words) = (view.Stair.Plan, view.Stair.Job, new PlanWords(view));
        if (plan.Newels.IsEmpty) return [];
        var inner = words.InnerString;
        var draft = new StageDraft("plan-newels", Bench.Plan, Subject, plan.Strings.Any(s => !s.IsWall) ? $"Plan: {inner} centre lines and newels" : "Plan: inner strings' centre lines and newel");
        CentreLines(view, words, draft);
        var half = job.Practice.Newel / 2;
        foreach (var site in plan.Newels)
        {
            var outline = view.Newels.First(n => n.Part.Id == site.Id).Outline;
            draft.LinedIn(site.Id, site.Name, site.Id, [outline], How(
                $"line in the {site.Name} square about its centre", Why(site), site.Role == NewelRole.Turn ? "" : Published.RiserOnNewel,
                [.. Place(site), new Measure("its centre", half, "to each of its four faces", "half side")]));
        }
        foreach (var site in plan.Strings.Where(s => !s.IsWall))
        {
            var outline = view.Strings.First(s => s.Part.Id == site.Id).Outline;
            draft.LinedIn(site.Id, site.Name, site.Id, [outline], How(
                $"line in both faces of the {site.Name} between its newels", $"the string's centre line runs through the newels' centres: half of {N(site.Thickness)} either side", "",
                new Measure("the string's centre line", site.Thickness / 2, "to either side", "half thickness")));
        }
        return draft.Done();

        Measure[] Place(NewelSite site)
        {
            if (plan.Turn is not { } turn)
            {
                var first = plan.Riser(1).Inner.Y;
                return [new("the first riser's mark, along the centre line,", site.Centre.Y - first, site.Role == NewelRole.Bottom ? "up the page, that is on the mark itself" : "up the page", "from riser 1")];
            }
            if (site.Role == NewelRole.Turn) return [];
            var climbing = (site.Role == NewelRole.Bottom ? -1 : 1) * plan.Outer.Edges[site.Role == NewelRole.Bottom ? 0 : 1].Along;
            return [new("the turn newel's centre, along the centre line,", site.Centre.DistanceTo(turn.Centre), words.Climbing(climbing), "from turn newel")];
        }

        string Why(NewelSite site)
        {
            if (site.Role == NewelRole.Turn) return "the turn's newel stands where the centre lines of the two inner strings cross";
            var face = $"the {(site.Role == NewelRole.Bottom ? "first" : "last")} riser's face lies on this newel's centre";
            if (plan.Turn is not { } turn) return face;
            var (e, n) = site.Role == NewelRole.Bottom ? (turn.FirstRiser, job.Layout.GoingsBefore) : (turn.LastRiser, job.Layout.GoingsAfter);
            return $"{face}: {N(e)} + {K(n)} × {N(plan.Going)} = {N(e + n * plan.Going)}";
        }
    }

    private static void CentreLines(PlanView view, PlanWords words, StageDraft draft)
    {
        var (plan, half) = (view.Stair.Plan, view.Stair.Job.Practice.Newel);
        var across = plan.ClearWidth + plan.InnerThickness / 2;
        var why = $"clear width and half the string: {N(plan.ClearWidth)} + {N(plan.InnerThickness)} / 2 = {N(across)}";
        if (plan.Turn is not { } turn)
        {
            var (x, top) = (plan.Newels[0].Centre.X, plan.Riser(plan.Risers).Inner.Y);
            foreach (var (name, at, own) in plan.Newels.Where(n => n.Role == NewelRole.Bottom).Select(n => (n.Inner ? "inner" : "outer", n.Centre.X, n.Inner)))
            {
                var line = Path2.Polyline(new Point2(at, -half), new Point2(at, top + half));
                // The first centre line of a stair without walls is the datum of the whole rod.
                var how = own && !words.HasOuterWall && plan.Strings.All(s => !s.IsWall)
                    ? How("draw the string's centre line along the rod; everything else is measured from it", "it leaves half a newel, and as much again, beside it", "",
                        new Measure("the edge of the rod", half, view.OuterSide > 0 ? "to the right" : "to the left", "from the edge"))
                    : own || plan.Strings.Any(s => s.IsWall && s.Inner)
                        ? How("draw the newel string's centre line", why, "", new Measure(own ? "the wall string's face" : "the inner wall string's face",
                            own ? across : plan.ClearWidth + plan.OuterThickness / 2, own ? words.In : words.Out, "across"))
                        : How("draw the other string's centre line", $"clear width and half of each string: {N(plan.InnerThickness)} / 2 + {N(plan.ClearWidth)} + {N(plan.OuterThickness)} / 2", "",
                            new Measure("the first centre line", Math.Abs(at - x), words.Out, "across"));
                draft.Faint($"centre-{name}", $"centre line, {name} string", ThingId.CentreLine, [line], how);
            }
            return;
        }
        var (c, first, second) = (turn.Centre, plan.Outer.Edges[0].Along, plan.Outer.Edges[1].Along);
        var low = c + (Math.Min(0, first.Dot(plan.Riser(1).Walking - c)) - half) * first;
        var high = c + (Math.Max(0, second.Dot(plan.Riser(plan.Risers).Walking - c)) + half) * second;
        draft.Faint("centre-1", "centre line, lower flight", ThingId.CentreLine, [Path2.Polyline(low, c + half * first)], How(
            $"draw the centre line of the lower flight's {words.InnerString}", why, "", new Measure("the wall string's face", across, words.In, "across")));
        draft.Faint("centre-2", "centre line, upper flight", ThingId.CentreLine, [Path2.Polyline(c - half * second, high)], How(
            $"draw the centre line of the upper flight's {words.InnerString}, square to the first", why, "", new Measure("the second wall string's face", across, words.Climbing(-1 * first), "across")));
    }
}
