using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets.Dimensions;

/// <summary>Says which way is up a stair, or which way grain or view runs: a ring where it starts, an open head where it goes, a word beside it.</summary>
public static class DirectionArrow
{
    private const double Head = 4;

    /// <summary>The marks of an arrow.</summary>
    /// <param name="from">Where it starts, mm of paper.</param>
    /// <param name="to">Where it points.</param>
    /// <param name="word">Written beside the middle, on the side that is up as read; empty for none.</param>
    /// <param name="height">Of the capitals, mm.</param>
    /// <exception cref="ArgumentException">Both ends are one point.</exception>
    public static IReadOnlyList<Mark> Draw(Point2 from, Point2 to, string word = "up", double height = 3.5)
    {
        var along = Line2.Between(from, to).Along;
        var (back, wing) = (to - Head * along, Head * 0.32 * along.Left);
        var marks = new List<Mark>
        {
            new StrokeMark(Path2.Circle(from, 1), Pens.Hidden with { Dash = Dash.None }, Layer.Lettering),
            new StrokeMark(Path2.Polyline(from + along, to), Pens.Hidden with { Dash = Dash.None }, Layer.Lettering),
            new StrokeMark(Path2.Polyline(back + wing, to, back - wing), Pens.Visible, Layer.Lettering),
        };
        if (word.Length > 0)
        {
            var above = Reading.IsReversed(along) ? along.Right : along.Left;
            marks.Add(new TextMark(
                from.Towards(to, 0.5) + (height / 2 + FlowText.Descent * height + Head * 0.32 + 0.3) * above, word, height, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle,
                Reading.TurnOf(along)));
        }
        return marks;
    }
}
