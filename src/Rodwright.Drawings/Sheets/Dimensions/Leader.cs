using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets.Dimensions;

/// <summary>A note led to a point: a dot on the point, a line to an elbow, a short shelf, and the words beyond the shelf.</summary>
public static class Leader
{
    private const double Shelf = 3;

    /// <summary>The marks of a leader.</summary>
    /// <param name="tip">The point spoken of, mm of paper.</param>
    /// <param name="elbow">Where the line turns level; the words lie beyond it, away from the tip.</param>
    /// <param name="lines">The words, one string a line.</param>
    /// <param name="height">Of the capitals, mm.</param>
    /// <param name="of">Id of the thing spoken of.</param>
    public static IReadOnlyList<Mark> Draw(Point2 tip, Point2 elbow, IEnumerable<string> lines, double height = 2.5, string? of = null)
    {
        var side = elbow.X >= tip.X ? 1 : -1;
        var end = new Point2(elbow.X + side * Shelf, elbow.Y);
        var marks = new List<Mark>
        {
            new FillMark([Path2.Circle(tip, 0.5)], 1, Layer.Dimension, of),
            new StrokeMark(Path2.Polyline(tip, elbow, end), Pens.Dimension, Layer.Dimension, of),
        };
        var at = end + new Vector2(side, 0);
        foreach (var line in lines)
        {
            marks.Add(new TextMark(
                at, line, height, Layer.Lettering, side > 0 ? HorizontalAnchor.Start : HorizontalAnchor.End, VerticalAnchor.Middle, of: of));
            at -= new Vector2(0, FlowText.Pitch * height);
        }
        return marks;
    }
}
