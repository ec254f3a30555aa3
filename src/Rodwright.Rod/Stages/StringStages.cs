using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>A string, or those that meet round corners, drawn in development: floor, risers, heights, margin line, edges, ends, housings, cuts, easings.</summary>
internal static class StringStages
{
    private const double Beyond = 30; // faint lines run on past what they find, mm of timber

    public static IEnumerable<Stage> Of(StringView view)
    {
        var words = new StringWords(view);
        return
        [
            .. Floor(words), .. Risers(words), .. Heights(words), .. Margin(words),
            .. StringEdgeStages.Edges(words), .. StringEndStages.Meetings(words), .. StringHousingStages.Of(words), .. StringEndStages.Cuts(words), .. StringEdgeStages.Easings(words),
        ];
    }

    public static StageDraft Draft(StringWords words, string id, string title)
    {
        var part = words.View.Boards[0].Part;
        var bench = words.View.Boards[0].Site.IsWall ? Bench.WallString : Bench.NewelString;
        return new($"{part.Id}-{id}", bench, part.Id, $"{char.ToUpperInvariant(words.Name[0])}{words.Name[1..]}: {title}");
    }

    private static IEnumerable<Stage> Floor(StringWords words)
    {
        var (view, plan) = (words.View, words.View.Stair.Plan);
        var draft = Draft(words, "floor", view.HasFloor ? "floor line" : "base line");
        var line = Path2.Polyline(new Point2(view.From - Beyond, words.Base), new Point2(view.To + Beyond, words.Base));
        var datum = StringWords.Plumb(0, words.Base, words.Base + plan.Rise);
        if (view.HasFloor)
        {
            draft.LinedIn("floor", "floor line", view.FloorId, [line, datum], How(
                $"draw the floor line along the rod, and {words.Datum} square up from it",
                words.Base > 0 ? $"the string stands on the landing, {plan.Units.Print(words.Base)} above the lower floor; all heights are measured from this line" : "all heights are measured up from the finished floor", "",
                new Measure("the lower edge of the rod", Room(), "up", "room")));
        }
        else
        {
            var k = view.PitchPoints[0].Riser;
            draft.LinedIn("floor", "base line", ThingId.Floor, [line, datum], How(
                $"draw a level base line along the rod, and {words.Datum} square up from it; write on it: {plan.Units.Print(words.Base)} above the floor",
                $"the floor is too far down for the rod. The line is {Riser(k)}'s height: {K(k)} × {plan.Units.Print(plan.Rise)} = {plan.Units.Print(words.Base)}", "",
                new Measure("the lower edge of the rod", Room(), "up", "room")));
        }
        return draft.Done();

        // What hangs below the line, and a hand's breadth, rounded up.
        double Room() => Math.Ceiling((Math.Max(0, words.Base - view.Bounds.MinY) + 50) / 10) * 10;
    }

    private static IEnumerable<Stage> Risers(StringWords words)
    {
        var view = words.View;
        var draft = Draft(words, "risers", "riser lines");
        var once = new Telling("risers", "riser lines",
            $"from {words.Datum} measure each distance of the table along {words.BaseName}, {words.Way(true)}{(view.PitchPoints[0].At.X < -0.05 ? " (those with a minus the other way)" : "")}; draw each riser's line plumb",
            $"carried over from the plan, where each riser's face meets this string; running distances from one datum, so that errors do not add up ({Published.Development})");
        foreach (var p in view.PitchPoints)
        {
            draft.Faint($"riser-{K(p.Riser)}", Say.Riser(p.Riser), ThingId.Riser(p.Riser), [StringWords.Plumb(p.At.X, words.Base, Math.Max(p.At.Y, words.Base) + Beyond)],
                How("draw the riser's line plumb", $"where {RiserFace(p.Riser)} meets the string in plan", Published.Development, words.Along(p.At.X)), once);
        }
        return draft.Done();
    }

    private static IEnumerable<Stage> Heights(StringWords words)
    {
        var (view, plan) = (words.View, words.View.Stair.Plan);
        var draft = Draft(words, "heights", "heights");
        var less = words.Base > 0 ? $", less the {plan.Units.Print(words.Base)} this line stands above the floor" : "";
        var once = new Telling("heights", "level lines",
            $"from {words.BaseName} measure each height of the table up; draw it level to its riser's line, and dot the pitch point where they cross",
            $"every rise is equal: {plan.Units.Print(view.Stair.Job.Survey.Height)} / {K(plan.Risers)} = {plan.Units.Print(plan.Rise, 2)}; level k stands at k × {plan.Units.Print(plan.Rise, 2)}{less}");
        for (var i = 0; i < view.PitchPoints.Length; i++)
        {
            var (k, at) = (view.PitchPoints[i].Riser, view.PitchPoints[i].At);
            var to = i + 1 < view.PitchPoints.Length ? view.PitchPoints[i + 1].At.X : Math.Max(at.X, view.To);
            draft.Faint($"level-{K(k)}", $"level {K(k)}", ThingId.Level(plan, k), [Path2.Polyline(new Point2(at.X - Beyond, at.Y), new Point2(to + Beyond, at.Y))],
                How("draw the level, and dot the pitch point", $"{K(k)} × {plan.Units.Print(plan.Rise, 2)} = {plan.Units.Print(at.Y)}{less}", "", words.Up(at.Y)), once);
        }
        return draft.Done();
    }

    private static IEnumerable<Stage> Margin(StringWords words)
    {
        var (view, plan) = (words.View, words.View.Stair.Plan);
        var draft = Draft(words, "margin", "margin line");
        var points = view.Boards[0].Margin;
        var step = Math.Sqrt(plan.Rise * plan.Rise + plan.Going * plan.Going);
        for (var i = 0; i + 1 < points.Length; i++)
        {
            var (a, b) = (points[i], points[i + 1]);
            var length = a.DistanceTo(b);
            var straight = Math.Abs((b - a).Unit.Cross(new Vector2(plan.Going, plan.Rise).Unit)) < 1e-6;
            var pitch = Angle.FromRadians((b - a).Direction);
            draft.Faint($"margin-{K(i + 1)}", points.Length == 2 ? "margin line" : $"margin line, piece {K(i + 1)}", ThingId.MarginLine, [Path2.Polyline(a, b)], How(
                straight
                    ? $"join the pitch points with the margin line; step it with the dividers at {plan.Units.Print(step)}: every stride must fall on a pitch point"
                    : "join the pitch points with the margin line",
                straight
                    ? $"pitch: tan = {plan.Units.Print(plan.Rise)} / {plan.Units.Print(plan.Going)}, {Number.Print(pitch.Degrees, 2)}°; one stride is the pitch board's long side, √({plan.Units.Print(plan.Rise)}² + {plan.Units.Print(plan.Going)}²) = {plan.Units.Print(step)}"
                    : $"over tapered steps the wide ends spread the pitch points: {plan.Units.Print(b.Y - a.Y)} up in {plan.Units.Print(b.X - a.X)} along, {Number.Print(pitch.Degrees, 2)}°",
                straight ? Published.PitchBoard : Published.Development,
                new Measure($"the pitch point at {plan.Units.Print(Math.Abs(a.X))} along and {plan.Units.Print(a.Y - words.Base)} up", length, $"{words.Way(true)}, on to the one at {plan.Units.Print(b.X)} along and {plan.Units.Print(b.Y - words.Base)} up", "length")));
        }
        return draft.Done();
    }
}
