using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Views;

namespace Rodwright.Workshop.Pictures;

/// <summary>The room as far as it has been measured, for the screen.</summary>
public static class SurveyPicture
{
    private const double Width = 150;
    private const double Height = 120;
    private const double Edge = 16; // paper all round for the lengths of the walls, mm
    private const double Letters = 3.5;

    /// <summary>The room, the stair in it, the length of every wall, and an arrow the way the tape is laid for one reading.</summary>
    /// <param name="stair">The stair in its room.</param>
    /// <param name="reading">Path of the reading at hand: survey.walls[0].length; null for none.</param>
    /// <param name="refused">Whether something was refused at a path: its wall says so.</param>
    public static Picture Of(Stair stair, string? reading, Func<string, bool> refused)
    {
        var view = new RoomView(stair);
        var room = new Box2(Edge, Edge, Width - Edge, Height - Edge);
        var ratio = Math.Max(view.Bounds.Width / room.Width, view.Bounds.Height / room.Height);
        var place = Placement.Centred(view.Bounds, room, Scale.OneTo(Math.Clamp(ratio, 1, 1000)));
        List<Mark> marks =
        [
            .. RoomMarks.Stair(view, place), .. RoomMarks.Walls(view, place), .. RoomMarks.Well(view, place), .. RoomMarks.Slopes(view, place, view.Bounds), .. RoomMarks.Least(view, place),
            .. view.Walls.SelectMany(w => Words(w, place, refused)),
        ];
        if (reading is not null && Tape(view, reading) is { } tape) marks.AddRange(Arrow(place.Map(tape.From), place.Map(tape.To)));
        return new(Width, Height, [.. marks]);
    }

    /// <summary>Where the tape lies for a reading, from its beginning to its end in the world; null for a reading that is not taken along the floor.</summary>
    public static (Point2 From, Point2 To)? Tape(RoomView view, string reading)
    {
        foreach (var wall in view.Walls)
        {
            var path = Edits.SurveyEdits.Item("survey.walls", wall.Index);
            if (reading == path + ".length") return (wall.From, wall.To);
            if (reading == path + ".corner.leg") return (wall.To, wall.At(wall.Length - (wall.Run.Corner?.Leg ?? 600)));
            if (reading == path + ".corner.diagonal" && wall.Index + 1 < view.Walls.Length) return (wall.From, view.Walls[wall.Index + 1].To);
            for (var i = 0; i < wall.Run.Openings.Count; i++)
            {
                var (opening, at) = (wall.Run.Openings[i], Edits.SurveyEdits.Item(path + ".openings", i));
                if (reading == at + ".at") return (wall.From, wall.At(opening.At));
                if (reading == at + ".width") return (wall.At(opening.At), wall.At(opening.At + opening.Width));
            }
        }
        if (view.Well is not { } well) return null;
        return reading switch
        {
            "survey.well.length" => (well.Edge(0).From, well.Edge(0).To),
            "survey.well.width" => (well.Edge(1).From, well.Edge(1).To),
            _ => null,
        };
    }

    private static IEnumerable<Mark> Words(RoomWall wall, Placement place, Func<string, bool> refused)
    {
        var readings = wall.Run.Length;
        var path = Edits.SurveyEdits.Item("survey.walls", wall.Index) + ".length";
        var apart = refused(path) ? " disagree" : readings.Values.Count > 1 ? $" ({Number.Print(readings.Spread)} apart)" : "";
        var (a, b) = (place.Map(wall.From), place.Map(wall.To));
        var at = a.Towards(b, 0.5) - 8 * wall.Inward;
        // A wall that runs up the picture has its words beside it on two lines: the paper is narrow there.
        var upright = Math.Abs(wall.Inward.X) > 0.7;
        yield return Word(wall.Name, at + new Vector2(0, upright ? 3 : 2.5));
        yield return Word(Number.Print(wall.Length, 0) + apart, at - new Vector2(0, upright ? 3 : 2.5));
    }

    private static TextMark Word(string text, Point2 at)
    {
        var half = Drawings.Fonts.Lettering.Width(text, Letters) / 2 + 1;
        return new(new(Math.Clamp(at.X, half, Width - half), at.Y), text, Letters, Layer.Dimension, HorizontalAnchor.Middle, VerticalAnchor.Middle, knockout: true);
    }

    private static IEnumerable<Mark> Arrow(Point2 from, Point2 to)
    {
        if (from.DistanceTo(to) < 1) yield break;
        var along = (to - from).Unit;
        yield return StrokeMark.Line(from, to, PicturePens.OnFace, Layer.Dimension, "tape");
        yield return new FillMark([Path2.Polygon(to, to - 4 * along + 1.6 * along.Left, to - 4 * along - 1.6 * along.Left)], 1, Layer.Dimension, "tape");
    }
}
