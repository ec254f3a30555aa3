using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Workshop.Edits;

namespace Rodwright.Workshop.Pictures;

/// <summary>The room in plan as far as it has been measured, for the screen. Areas to press carry the path of their reading.</summary>
public static class SurveyPicture
{
    private const double Width = 120;
    private const double Edge = 15.5; // paper all round for the figures of the walls, mm
    private const double Off = 4.4; // from a wall's face to its tape, mm
    private const double Letters = TapeMarks.Letters;

    /// <summary>Room and stair, a tape with its figure along every wall, the tape of the reading at hand, and what was refused where it was read.</summary>
    public static Picture Of(RoomView view, SurveyAsk ask)
    {
        var next = NextWall(view, ask);
        var seen = next is { } n ? view.Bounds.With(n.From).With(n.To) : view.Bounds;
        var ratio = Math.Clamp(Math.Max(seen.Width / (Width - 2 * Edge), seen.Height / (108 - 2 * Edge)), 1, 1000);
        var height = Math.Max(56, seen.Height / ratio + 2 * Edge);
        var place = Placement.Centred(seen, new(Edge, Edge, Width - Edge, height - Edge), Scale.OneTo(ratio));
        List<Mark> marks =
        [
            .. RoomMarks.Stair(view, place), .. RoomMarks.Walls(view, place), .. RoomMarks.Well(view, place), .. RoomMarks.Linings(view, place), .. RoomMarks.Slopes(view, place, view.Bounds), .. RoomMarks.Least(view, place),
            .. view.Walls.SelectMany(w => Figures(view.Stair.Units, w, place, ask)),
        ];
        if (next is { } ghost) marks.AddRange(Ghost(view, ghost, place, ask));
        marks.AddRange(AtHand(view, place, ask));
        marks.AddRange(Labels(view, place, ask, marks, new(1, 1, Width - 1, height - 1)));
        return new(Width, height, [.. marks, .. Areas(view, place)]);
    }

    /// <summary>Where the next wall would run: shown when it is at hand or refused, and before the first.</summary>
    private static (Point2 From, Point2 To)? NextWall(RoomView view, SurveyAsk ask)
    {
        var path = SurveyEdits.Item("survey.walls", view.Walls.Length) + ".length";
        return view.Walls.IsEmpty || ask.Reading == path || ask.At(path) is not null ? SurveyTapes.Next(view, ask.At(path) is { Values: [var first, ..] } ? first : 1500) : null;
    }

    private static IEnumerable<Mark> Figures(Units units, RoomWall wall, Placement place, SurveyAsk ask)
    {
        var path = SurveyEdits.Item("survey.walls", wall.Index) + ".length";
        var away = -wall.Inward;
        var off = (Off + place.Map(wall.LeafOut)) * away;
        var (a, b) = (place.Map(wall.From) + off, place.Map(wall.To) + off);
        var refused = ask.At(path);
        var of = refused is not null ? TapeMarks.Disagrees : ask.Reading == path ? TapeMarks.AtHand : null;
        foreach (var mark in TapeMarks.Draw(a, b, of)) yield return mark;
        foreach (var mark in TapeMarks.Ticks(a, (b - a).Unit, (refused?.Values ?? []).Select(place.Map))) yield return mark;
        var readings = wall.Run.Length;
        var figure = refused?.Words(units) ?? units.Print(wall.Length, 1) + (readings.Values.Count > 1 ? $" ({units.Print(readings.Spread)} apart)" : "");
        foreach (var word in TapeMarks.Along(a, b, away, (wall.Name, figure), refused is null ? null : TapeMarks.Disagrees)) yield return word;
    }

    private static IEnumerable<Mark> Ghost(RoomView view, (Point2 From, Point2 To) wall, Placement place, SurveyAsk ask)
    {
        var path = SurveyEdits.Item("survey.walls", view.Walls.Length) + ".length";
        var (from, to) = (place.Map(wall.From), place.Map(wall.To));
        var along = (to - from).Unit;
        // Away from the room: the side the stair is not on.
        var away = (place.Map(view.Bounds.Centre) - from).Dot(along.Left) > 0 ? along.Right : along.Left;
        yield return StrokeMark.Line(from, to, new(0.35, Dash.Short), Layer.Site);
        var refused = ask.At(path);
        foreach (var mark in TapeMarks.Draw(from + Off * away, to + Off * away, refused is not null ? TapeMarks.Disagrees : ask.Reading == path ? TapeMarks.AtHand : null)) yield return mark;
        foreach (var mark in TapeMarks.Ticks(from + Off * away, along, (refused?.Values ?? []).Select(place.Map))) yield return mark;
        var name = view.Walls.IsEmpty ? "first wall" : "next wall";
        foreach (var word in TapeMarks.Along(from + Off * away, to + Off * away, away, (name, refused?.Words(view.Stair.Units) ?? "not measured yet"), refused is null ? null : TapeMarks.Disagrees)) yield return word;
    }

    /// <summary>Tapes that lie elsewhere than along a wall: the one at hand, and those whose readings disagree.</summary>
    private static IEnumerable<Mark> AtHand(RoomView view, Placement place, SurveyAsk ask)
    {
        foreach (var refused in ask.Refused.Where(r => !IsWall(r.Path)))
        {
            if (SurveyTapes.Level(view, refused.Path) is not { } tape) continue;
            var (from, to) = (place.Map(tape.From), place.Map(tape.To));
            foreach (var mark in TapeMarks.Draw(from, to, TapeMarks.Disagrees)) yield return mark;
            foreach (var mark in TapeMarks.Ticks(from, (to - from).Unit, refused.Values.Select(place.Map))) yield return mark;
        }
        if (ask.Reading is { } path && !IsWall(path) && ask.At(path) is null && SurveyTapes.Level(view, path) is { } hand)
            foreach (var mark in TapeMarks.Draw(place.Map(hand.From), place.Map(hand.To), TapeMarks.AtHand)) yield return mark;
    }

    private static bool IsWall(string path) => path.StartsWith("survey.walls[", StringComparison.Ordinal) && path.EndsWith("].length", StringComparison.Ordinal);

    private static List<Mark> Labels(RoomView view, Placement place, SurveyAsk ask, List<Mark> drawn, Box2 room)
    {
        var marks = new List<Mark>();
        var placer = new LabelPlacer(room);
        placer.Avoid(drawn);
        foreach (var refused in ask.Refused.Where(r => !IsWall(r.Path)))
            if (SurveyTapes.Level(view, refused.Path) is { } tape) Say(refused.Words(view.Stair.Units), tape.From.Towards(tape.To, 0.5), TapeMarks.Disagrees);
        if (view.Report.Headroom?.Least is { } least) Say($"headroom {view.Stair.Units.Print(least.Least, 0)}", least.At);
        if (view.Stair.Job.Survey.Well is { } well && view.Well is { } ring)
            Say(well.IsRectangle ? $"well {view.Stair.Units.Print(well.Length.Mean, 1)} × {view.Stair.Units.Print(well.Width.Mean, 1)}" : $"well of {Number.Print(well.Corners.Count, 0)} corners", Free(view, ring));
        foreach (var wall in view.Walls)
        {
            foreach (var opening in wall.Run.Openings) Say($"{opening.Words} {view.Stair.Units.Print(opening.Width, 0)}", wall.At(opening.At + opening.Width / 2));
            if (wall.Run.Corner is { } corner && corner.Degrees(wall.Length, wall.Index + 1 < view.Walls.Length ? view.Walls[wall.Index + 1].Length : 0) is { } inside) Say($"{Number.Print(inside, 1)}°", wall.To);
        }
        foreach (var above in view.Report.Headroom?.Above ?? [])
            if (view.Contour(above, view.Report.HeadroomWanted ?? 2000, view.Bounds) is { } line) Say($"{above.Name} {view.Stair.Units.Print(view.Report.HeadroomWanted ?? 2000, 0)} high", line.A.Towards(line.B, 0.3));
        Say("up", view.Stair.Plan.Riser(1).Walking);
        return marks;

        void Say(string words, Point2 near, string? of = null)
        {
            if (placer.Place(words, place.Map(near), Letters, gap: 2, of: of) is { } label) marks.AddRange(label.Marks.Select(m => m is TextMark text ? text with { Knockout = true } : m));
        }
    }

    /// <summary>The middle of the edge that lies furthest from any wall.</summary>
    private static Point2 Free(RoomView view, Path2 well) => Enumerable.Range(0, well.EdgeCount).Select(i => well.Edge(i).From.Towards(well.Edge(i).To, 0.5))
        .MaxBy(p => view.Walls.Select(w => Path2.Polyline(w.From, w.To).DistanceTo(p)).DefaultIfEmpty(0).Min());

    /// <summary>What can be pressed, the smallest last: well, walls, doors and windows.</summary>
    private static IEnumerable<Mark> Areas(RoomView view, Placement place)
    {
        if (view.Well is { } well) yield return new FillMark([place.Map(well)], 1, Layer.Hit, view.Stair.Job.Survey.Well!.IsRectangle ? "survey.well.length" : "survey.well.corners[0].along");
        foreach (var wall in view.Walls)
        {
            var path = SurveyEdits.Item("survey.walls", wall.Index);
            yield return Band(wall, 0, wall.Length, 3, Off + place.Map(wall.LeafOut) + 5, path + ".length");
            for (var i = 0; i < wall.Run.Openings.Count; i++)
                yield return Band(wall, wall.Run.Openings[i].At, wall.Run.Openings[i].At + wall.Run.Openings[i].Width, 4, 4, SurveyEdits.Item(path + ".openings", i) + ".at");
        }
        if (view.Walls.IsEmpty && SurveyTapes.Next(view, 1500) is var next)
        {
            var (a, b) = (place.Map(next.From), place.Map(next.To));
            var side = 8 * (b - a).Unit.Left;
            yield return new FillMark([Path2.Polygon(a + side, b + side, b - side, a - side)], 1, Layer.Hit, SurveyEdits.Item("survey.walls", 0) + ".length");
        }

        Mark Band(RoomWall wall, double from, double to, double inward, double outward, string of)
        {
            var (a, b, into) = (place.Map(wall.At(from)), place.Map(wall.At(to)), wall.Inward);
            return new FillMark([Path2.Polygon(a + inward * into, b + inward * into, b - outward * into, a - outward * into)], 1, Layer.Hit, of);
        }
    }
}
