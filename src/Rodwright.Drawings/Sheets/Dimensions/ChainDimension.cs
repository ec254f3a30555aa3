using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets.Dimensions;

/// <summary>
/// Dimensions end to end along one line. For where a template steps; for marking out use <see cref="RunningDimension"/>, whose errors do not add up.
/// </summary>
public static class ChainDimension
{
    /// <summary>The marks of a chain; each figure is the difference of two stops' values.</summary>
    /// <param name="stops">Two stops or more, in any order.</param>
    /// <param name="line">The dimension line on paper.</param>
    /// <param name="style">The look; <see cref="DimensionStyle.Usual"/> when null.</param>
    /// <exception cref="ArgumentException">Fewer than two stops.</exception>
    public static IReadOnlyList<Mark> Draw(IEnumerable<DimensionStop> stops, Line2 line, DimensionStyle? style = null)
    {
        style ??= DimensionStyle.Usual;
        var row = new DimensionRow(stops, line, style);
        var n = row.Stops.Count;
        if (n < 2) throw new ArgumentException("a chain has two stops at least", nameof(stops));
        var marks = new List<Mark> { row.Stroke(style.Pen, null, row.Out(row.Station(0), 0), row.Out(row.Station(n - 1), 0)) };
        for (var i = 0; i < n; i++)
        {
            if (row.Extension(i, style.Overrun) is { } extension) marks.Add(extension);
            marks.Add(row.Slash(i));
        }
        marks.AddRange(Figures(row, line, style));
        return marks;
    }

    /// <summary>One dimension between two points of paper.</summary>
    /// <param name="from">The first point.</param>
    /// <param name="to">The second point; the dimension runs along the line between them.</param>
    /// <param name="offset">Distance of the dimension line to the left of that line (negative: to the right), mm of paper.</param>
    /// <param name="value">The figure, mm of timber.</param>
    /// <param name="style">The look.</param>
    public static IReadOnlyList<Mark> Between(Point2 from, Point2 to, double offset, double value, DimensionStyle? style = null) =>
        Draw([new(from, 0), new(to, value)], Line2.Between(from, to).OffsetLeft(offset), style);

    private static IEnumerable<TextMark> Figures(DimensionRow row, Line2 line, DimensionStyle style)
    {
        // A figure wider than its space climbs to a higher tier, clear of the others already there.
        var tiers = new List<double> { double.NegativeInfinity };
        var pitch = style.TextHeight + style.Clear + 0.4;
        for (var i = 0; i + 1 < row.Stops.Count; i++)
        {
            var text = style.Units.Print(Math.Abs(row.Stops[i + 1].Value - row.Stops[i].Value), style.Decimals);
            var (from, to) = (row.Station(i), row.Station(i + 1));
            var (middle, half) = ((from + to) / 2, Lettering.Width(text, style.TextHeight) / 2);
            var tier = 2 * half + 2 <= to - from ? 0 : 1;
            while (tier < tiers.Count && tiers[tier] + 1 > middle - half) tier++;
            while (tier >= tiers.Count) tiers.Add(double.NegativeInfinity);
            tiers[tier] = middle + half;
            var rise = tier == 0 ? style.Clear : Math.Max(style.Clear, style.Overrun) + 0.6 + (tier - 1) * pitch + style.TextHeight + style.Clear;
            yield return new(
                row.Out(middle, rise + style.TextHeight / 2), text, style.TextHeight, Layer.Dimension,
                HorizontalAnchor.Middle, VerticalAnchor.Middle, Reading.TurnOf(line.Along), of: (row.Stops[i + 1].Value > row.Stops[i].Value ? row.Stops[i + 1] : row.Stops[i]).Of);
        }
    }
}
