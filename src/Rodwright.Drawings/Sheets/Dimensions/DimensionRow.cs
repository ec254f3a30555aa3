using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets.Dimensions;

/// <summary>What chains and running ordinates share: a line, the stops along it in order, and the side away from the features.</summary>
internal sealed class DimensionRow
{
    private readonly Line2 line;
    private readonly DimensionStyle style;
    private readonly double away;

    public DimensionRow(IEnumerable<DimensionStop> stops, Line2 line, DimensionStyle style)
    {
        this.line = line;
        this.style = style;
        Stops = [.. stops.OrderBy(s => line.Station(s.At))];
        // Figures go to the side without extension lines.
        away = Stops.Sum(s => line.LeftOf(s.At)) > 0 ? -1 : 1;
    }

    public IReadOnlyList<DimensionStop> Stops { get; }

    public double Station(int i) => line.Station(Stops[i].At);

    /// <summary>A point along the line and out from it, away from the features.</summary>
    public Point2 Out(double station, double distance) => line.At(station) + away * distance * line.Along.Left;

    /// <summary>Direction away from the features.</summary>
    public Vector2 Outward => away * line.Along.Left;

    public StrokeMark Stroke(Pen pen, string? of, params IEnumerable<Point2> points) => new(Path2.Polyline(points), pen, Layer.Dimension, of);

    /// <summary>The line from near a feature to the dimension line and past it; null when the feature lies on the line.</summary>
    public StrokeMark? Extension(int i, double past)
    {
        var reach = Math.Abs(line.LeftOf(Stops[i].At));
        var start = Math.Min(reach, Math.Max(reach - style.Gap, 0));
        return start + past <= 0 ? null : Stroke(style.Pen, Stops[i].Of, Out(Station(i), -start), Out(Station(i), past));
    }

    /// <summary>The slash that ends a dimension line, leaning the way it is read.</summary>
    public StrokeMark Slash(int i)
    {
        var lean = (line.Along + line.Along.Left).Unit;
        if (Reading.IsReversed(line.Along)) lean = -lean;
        var at = line.At(Station(i));
        return Stroke(style.SlashPen, null, at - style.Slash * lean, at + style.Slash * lean);
    }
}
