using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>A graphic scale: a bar divided in round lengths of timber, true even when a print or copy is not.</summary>
public static class ScaleBar
{
    private static readonly double[] Steps = [10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000, 2500, 5000];

    /// <summary>The marks of a bar of five divisions.</summary>
    /// <param name="at">Its zero, on its lower edge, mm of paper.</param>
    /// <param name="scale">The drawing's scale.</param>
    /// <param name="longest">Room along x, mm of paper.</param>
    public static IReadOnlyList<Mark> Draw(Point2 at, Scale scale, double longest = 80)
    {
        var step = Steps.LastOrDefault(s => 5 * s * scale.Factor <= longest, Steps[0]);
        var marks = new List<Mark>();
        var place = new Placement(scale, Point2.Origin, at);
        var thick = 1.4 * scale.Ratio;
        for (var i = 0; i < 5; i++)
        {
            var low = i % 2 == 0;
            marks.Add(new FillMark(
                [place.Map(Path2.Rectangle(i * step, low ? 0 : thick / 2, (i + 1) * step, low ? thick / 2 : thick))], 1, Layer.Frame));
        }
        marks.Add(new StrokeMark(place.Map(Path2.Rectangle(0, 0, 5 * step, thick)), Pens.Dimension, Layer.Frame));
        for (var i = 0; i <= 5; i++)
        {
            if (i is not (0 or 1 or 5)) continue;
            var end = place.Map(new Point2(i * step, thick));
            marks.Add(StrokeMark.Line(end - new Vector2(0, 1.4), end + new Vector2(0, 1), Pens.Dimension, Layer.Frame));
            marks.Add(new TextMark(
                end + new Vector2(0, 1.8), Number.Print(i * step, 0) + (i == 5 ? " mm" : ""), 2.5, Layer.Frame, HorizontalAnchor.Middle));
        }
        return marks;
    }
}
