using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;

namespace Rodwright.Workshop.Pictures;

/// <summary>Draws a tape: a dot where it is hooked, a line, an arrow where it is read.</summary>
internal static class TapeMarks
{
    /// <summary>The thing that marks of the tape at hand belong to.</summary>
    public const string AtHand = "tape";

    /// <summary>The thing that marks of refused readings belong to.</summary>
    public const string Disagrees = "disagrees";

    /// <summary>Height of capitals, mm.</summary>
    public const double Letters = 2.7;

    private static readonly Pen Thin = new(0.25, Dash.None);
    private static readonly Pen Heavy = new(0.9, Dash.None);

    /// <summary>The tape, heavy when it is at hand or its readings disagree.</summary>
    /// <param name="from">Where it is hooked, mm of paper.</param>
    /// <param name="to">Where it is read.</param>
    /// <param name="of">The thing; null draws it thin.</param>
    public static IEnumerable<Mark> Draw(Point2 from, Point2 to, string? of = null)
    {
        if (from.DistanceTo(to) < 1) yield break;
        var along = (to - from).Unit;
        var size = of is null ? 1.0 : 1.5;
        yield return StrokeMark.Line(from, to - size * along, of is null ? Thin : Heavy, Layer.Dimension, of);
        yield return new FillMark([Path2.Circle(from, 0.75 * size)], 1, Layer.Dimension, of);
        yield return new FillMark([Path2.Polygon(to, to - 3 * size * along + size * along.Left, to - 3 * size * along - size * along.Left)], 1, Layer.Dimension, of);
    }

    /// <summary>A tick across the tape at each reading that was refused, so far from where it is hooked.</summary>
    /// <param name="from">Where the tape is hooked, mm of paper.</param>
    /// <param name="along">Unit direction of the tape.</param>
    /// <param name="stations">The readings, mm of paper.</param>
    public static IEnumerable<Mark> Ticks(Point2 from, Vector2 along, IEnumerable<double> stations) =>
        stations.Select(s => StrokeMark.Line(from + s * along - 2.4 * along.Left, from + s * along + 2.4 * along.Left, Heavy, Layer.Dimension, Disagrees));

    /// <summary>Words along a line beside it, on one line where they find room, else on two, the last nearest the line.</summary>
    /// <param name="from">The line's beginning, mm of paper.</param>
    /// <param name="to">Its end.</param>
    /// <param name="away">Unit direction away from the line.</param>
    /// <param name="words">The words, in two parts.</param>
    /// <param name="of">The thing they belong to.</param>
    public static IEnumerable<TextMark> Along(Point2 from, Point2 to, Vector2 away, (string Name, string Figure) words, string? of = null)
    {
        var middle = from.Towards(to, 0.5);
        var turn = Reading.TurnOf((to - from).Unit);
        var one = words.Name.Length > 0 ? $"{words.Name}  {words.Figure}" : words.Figure;
        var near = 1.4 + Letters / 2;
        if (words.Name.Length == 0 || Lettering.Width(one, Letters) <= from.DistanceTo(to) + 4)
        {
            yield return Word(one, near);
            yield break;
        }
        // Read from below or from the right, what is written first stands on top: nearer the line where the line is above.
        var up = Vector2.At(turn.Radians).Left.Dot(away) > 0;
        yield return Word(up ? words.Figure : words.Name, near);
        yield return Word(up ? words.Name : words.Figure, near + Letters + 1.5);

        TextMark Word(string text, double off) => new(middle + off * away, text, Letters, Layer.Dimension, HorizontalAnchor.Middle, VerticalAnchor.Middle, turn, of: of);
    }
}
