using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>The first stages of the plan: faces of walls, wall strings; <see cref="PlanNewels"/> goes on with centre lines, newels and newel strings.</summary>
internal static class PlanGround
{
    public const string Subject = "plan";

    public static IEnumerable<Stage> Of(PlanView view) => [.. Walls(view), .. WallStrings(view), .. PlanNewels.Of(view)];

    private static IEnumerable<Stage> Walls(PlanView view)
    {
        var (plan, job, words) = (view.Stair.Plan, view.Stair.Job, new PlanWords(view));
        var draft = new StageDraft("plan-walls", Bench.Plan, Subject, "Plan: faces of the walls");
        for (var i = 0; i < view.WallParts.Length; i++)
        {
            var wall = view.WallParts[i].Face;
            var name = i == 0 ? "the wall's face" : $"wall face {K(i + 1)}";
            var (id, of) = ($"wall-{K(i + 1)}", view.WallOf(i));
            if (wall.Vertices.Length > 2)
            {
                draft.LinedIn(id, name, of, [wall], Cornered(view, words, i));
                continue;
            }
            draft.LinedIn(id, name, of, [wall], i > 0
                ? How("draw the wall's face parallel", "the stair is measured over its strings, from wall to wall", "", new Measure("the wall's face across the stair", job.Width, Towards(view, i, words), "width"))
                : plan.Turns.IsEmpty ? Straight(plan, words, wall) : Lone(plan, words, wall));
        }
        return draft.Done();
    }

    private static Instruction Straight(StairPlan plan, PlanWords words, Path2 wall) => words.HasOuterWall
        ? How("draw the wall's face along the edge of the rod and mark the first and the last riser's places on it", $"{K(plan.Risers - 1)} goings of {plan.Units.Print(plan.Going)}: {K(plan.Risers - 1)} × {plan.Units.Print(plan.Going)} = {plan.Units.Print(wall.Length)}", "",
            new Measure("the first riser's mark", wall.Length, "up the page to the last riser's", "length"))
        : How("draw the wall's face, and mark the first riser's place at its foot", $"all goings: {K(plan.Risers - 1)} × {plan.Units.Print(plan.Going)} = {plan.Units.Print(wall.Length)}", "",
            new Measure("the first riser's mark", wall.Length, "up the page", "length"));

    /// <summary>The first wall of a stair that turns, where it has no corner.</summary>
    private static Instruction Lone(StairPlan plan, PlanWords words, Path2 wall)
    {
        var (a, b) = (wall.Edge(0).From, wall.Edge(0).To);
        var up = (plan.Flights[0].Along.Dot(b - a) > 0 ? b - a : a - b).Unit;
        return How("draw the wall's face along the edge of the rod, and mark both its ends", "it ends where the turn's newel stands; the flight beside it is measured from it", "",
            new Measure("its lower end", wall.Length, words.Climbing(up), "length"));
    }

    /// <summary>A wall with corners in it: both ways from each corner.</summary>
    private static Instruction Cornered(PlanView view, PlanWords words, int index)
    {
        var (plan, part) = (view.Stair.Plan, view.WallParts[index]);
        var points = part.Face.Vertices.Select(v => v.At).ToList();
        if (RiserAt(points[0]) > RiserAt(points[^1])) points.Reverse();
        var corners = points.Count - 2;
        var measures = new List<Measure>();
        if (index > 0 && FromBelow() is { } below) measures.Add(below);
        for (var k = 1; k <= corners; k++)
        {
            var name = Name(points[k]);
            if (k == 1)
                measures.Add(new(name, points[0].DistanceTo(points[1]), $"{words.Climbing((points[0] - points[1]).Unit)}, {Start()}", corners == 1 ? "first wall" : $"wall {K(k)}"));
            measures.Add(new(corners == 1 ? "the same corner" : name, points[k].DistanceTo(points[k + 1]),
                $"{words.Climbing((points[k + 1] - points[k]).Unit)}, {(k < corners ? $"to {Name(points[k + 1])}" : End())}", corners == 1 ? "second wall" : $"wall {K(k + 1)}"));
        }
        var square = plan.Units.IsInches ? "3 feet on one, 4 feet on the other and 5 feet across" : "600 on one, 800 on the other and 1000 across";
        var act = corners == 1 ? $"draw both walls' faces, square to one another; prove the corner with {square}"
            : $"draw the walls' faces, each square to the one before it; prove every corner with {square}";
        var why = "the stair is made square; the gap to a wall out of square is scribed on site. Everything in the turn is measured from " + (corners == 1 ? "this corner" : "these corners");
        if (index > 0) why += $"; across the stair it stands {plan.Units.Print(view.Stair.Job.Width)} from the wall over there";
        return How(act, why, "", [.. measures]);

        string Name(Point2 corner) => "the " + TurnPlaces.CornerName(plan, corner);

        // A wall that does not hang together with the one below it is found from the corner below, along the flight between.
        Measure? FromBelow()
        {
            var turn = TurnPlaces.Corners(plan).MinBy(c => c.At.DistanceTo(points[1])).Turn;
            if (turn.Index == 0) return null;
            var corner = TurnPlaces.Corners(plan.Turns[turn.Index - 1])[^1];
            var from = view.WallParts.SelectMany(w => w.Face.Vertices.Select(v => v.At)).MinBy(p => p.DistanceTo(corner));
            var along = plan.Flights[turn.Index].Along;
            return new($"{Name(corner)}, along the wall's face,", Math.Abs((points[1] - from).Dot(along)), $"{words.Climbing(along)}, and square across the flight to {Name(points[1])}", "from corner to corner");
        }

        bool IsFree(bool lower) => lower == (points[0] == part.Face.Vertices[0].At) ? part.StartsFree : part.EndsFree;

        string Start() => IsFree(true) ? "to the first riser" : "to its end, before the newel";

        string End() => IsFree(false) ? "to the last riser" : "to its end, before the newel";

        int RiserAt(Point2 p) => plan.RiserLines.MinBy(r => Math.Min(r.Inner.DistanceTo(p), r.Outer.DistanceTo(p)))!.Number;
    }

    /// <summary>The way from the wall across the stair to a straight one.</summary>
    private static string Towards(PlanView view, int index, PlanWords words)
    {
        var edge = view.WallParts[index].Face.Edge(0);
        return words.Climbing((edge.To - edge.From).Unit.Left);
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
                "draw the string's face parallel to the wall", $"the string is {plan.Units.Print(site.Thickness)} thick, and stands against the wall", "",
                new Measure("the wall's face", site.Thickness, way, "thickness")));
            draft.LinedIn($"{site.Id}-outline", site.Name, site.Id, [part.Outline], How(
                "line in the string; leave its ends to run on until it is set out in development",
                $"between the strings' faces there is {plan.Units.Print(plan.ClearWidth)} clear: {plan.Units.Print(view.Stair.Job.Width)} − {plan.Units.Print(plan.OuterThickness)} − {plan.Units.Print(plan.InnerThickness)}", "",
                new Measure("the string's face", site.Thickness, $"{words.Climbing(-1 * away)}, back to the wall", "thickness")));
        }
        return draft.Done();
    }
}
