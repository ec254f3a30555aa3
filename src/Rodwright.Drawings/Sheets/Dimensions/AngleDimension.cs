using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets.Dimensions;

/// <summary>An angle told by an arc between two directions and its figure in degrees outside the arc.</summary>
public static class AngleDimension
{
    /// <summary>The marks of an angle.</summary>
    /// <param name="apex">Where the two lines meet, mm of paper.</param>
    /// <param name="start">Direction of the first line.</param>
    /// <param name="sweep">From the first line to the second, positive anticlockwise, not zero.</param>
    /// <param name="radius">Of the arc, mm of paper.</param>
    /// <param name="style">The look.</param>
    public static IReadOnlyList<Mark> Draw(Point2 apex, Angle start, Angle sweep, double radius, DimensionStyle? style = null)
    {
        style ??= DimensionStyle.Usual;
        var end = start.Radians + sweep.Radians;
        var (a, b) = (Vector2.At(start.Radians), Vector2.At(end));
        var arc = new Path2([new(apex + radius * a, Angle.Tan(sweep.Radians / 4)), new(apex + radius * b)], false);
        var text = Number.Print(Math.Abs(sweep.Degrees), style.Decimals) + "°";
        var out1 = Vector2.At(start.Radians + sweep.Radians / 2);
        var half = new Vector2(Lettering.Width(text, style.TextHeight) / 2, style.TextHeight / 2);
        var reach = radius + style.Clear + Math.Abs(out1.X) * half.X + Math.Abs(out1.Y) * half.Y;
        return
        [
            new StrokeMark(arc, style.Pen, Layer.Dimension),
            Slash(apex + radius * a, a, style),
            Slash(apex + radius * b, b, style),
            new TextMark(apex + reach * out1, text, style.TextHeight, Layer.Dimension, HorizontalAnchor.Middle, VerticalAnchor.Middle),
        ];
    }

    private static StrokeMark Slash(Point2 at, Vector2 outward, DimensionStyle style)
    {
        var lean = (outward + outward.Left).Unit;
        return new(Path2.Polyline(at - style.Slash * lean, at + style.Slash * lean), style.SlashPen, Layer.Dimension);
    }
}
