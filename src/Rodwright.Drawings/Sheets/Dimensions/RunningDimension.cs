using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets.Dimensions;

/// <summary>
/// Running ordinates: every figure is measured from one datum, so that errors of marking out do not add up. Figures stand square to the line;
/// where stops crowd, the figures are moved apart and joined to their stops by dog-legs.
/// </summary>
public static class RunningDimension
{
    private const double DogLeg = 4;

    /// <summary>The marks of a row of ordinates. The stop whose value is nearest zero is ringed as the datum.</summary>
    /// <param name="stops">The stops, in any order, each printing its own value.</param>
    /// <param name="line">The line on paper along which the ordinates run.</param>
    /// <param name="style">The look; <see cref="DimensionStyle.Usual"/> when null.</param>
    /// <exception cref="ArgumentException">No stops.</exception>
    public static IReadOnlyList<Mark> Draw(IEnumerable<DimensionStop> stops, Line2 line, DimensionStyle? style = null)
    {
        style ??= DimensionStyle.Usual;
        var row = new DimensionRow(stops, line, style);
        var n = row.Stops.Count;
        if (n == 0) throw new ArgumentException("ordinates need a stop", nameof(stops));
        var stations = Enumerable.Range(0, n).Select(row.Station).ToList();
        var places = Spread.Apart(stations, style.TextHeight * 1.5);
        var datum = Enumerable.Range(0, n).MinBy(i => Math.Abs(row.Stops[i].Value));
        var crowded = Enumerable.Range(0, n).Any(i => IsMoved(i));
        var shoulder = style.Overrun + (crowded ? DogLeg : 0);
        var marks = new List<Mark>();
        if (n > 1) marks.Add(row.Stroke(style.Pen, null, row.Out(stations[0], 0), row.Out(stations[^1], 0)));
        for (var i = 0; i < n; i++)
        {
            if (row.Extension(i, IsMoved(i) ? style.Overrun : shoulder + 1) is { } extension) marks.Add(extension);
            if (IsMoved(i))
                marks.Add(row.Stroke(style.Pen, row.Stops[i].Of, row.Out(stations[i], style.Overrun), row.Out(places[i], shoulder), row.Out(places[i], shoulder + 1)));
            marks.Add(i == datum
                ? new StrokeMark(Path2.Circle(row.Out(stations[i], 0), style.Slash * 0.85), style.SlashPen, Layer.Dimension)
                : row.Slash(i));
            marks.Add(Figure(row, row.Out(places[i], shoulder + 1 + style.Clear), row.Stops[i], style));
        }
        return marks;

        bool IsMoved(int i) => Math.Abs(places[i] - stations[i]) > 0.02;
    }

    private static TextMark Figure(DimensionRow row, Point2 at, DimensionStop stop, DimensionStyle style)
    {
        // The figure is what the eye looks for: it stands next to the line, the note beyond it.
        var reversed = Reading.IsReversed(row.Outward);
        var figure = style.Units.Print(stop.Value, style.Decimals);
        var text = stop.Note.Length == 0 ? figure : reversed ? $"{stop.Note}  {figure}" : $"{figure}  {stop.Note}";
        var anchor = reversed ? HorizontalAnchor.End : HorizontalAnchor.Start;
        return new(at, text, style.TextHeight, Layer.Dimension, anchor, VerticalAnchor.Middle, Reading.TurnOf(row.Outward), of: stop.Of);
    }
}
