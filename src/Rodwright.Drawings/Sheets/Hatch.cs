using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>Hatching clipped to a shape. Lines lie on one grid over the whole sheet, so that the hatching of neighbours meets.</summary>
public static class Hatch
{
    private const double Chord = 0.02; // finer than a hatching pen is wide

    /// <summary>Lines in one direction across the shape; several outlines count by the even-odd rule.</summary>
    /// <param name="outlines">Closed outlines, mm of paper.</param>
    /// <param name="spacing">Between lines, mm.</param>
    /// <param name="turn">Direction of the lines.</param>
    /// <param name="layer">What the hatching means.</param>
    /// <param name="pen">The pen; <see cref="Pens.Hatch"/> when null.</param>
    /// <param name="of">Id of the thing hatched.</param>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not above zero.</exception>
    public static IReadOnlyList<StrokeMark> Lines(
        IEnumerable<Path2> outlines, double spacing, Angle turn, Layer layer, Pen? pen = null, string? of = null)
    {
        if (!(spacing > 0)) throw new ArgumentOutOfRangeException(nameof(spacing), spacing, "hatching needs space between its lines");
        var along = Vector2.At(turn.Radians);
        var across = along.Left;
        var edges = new List<(double U0, double V0, double U1, double V1)>();
        foreach (var outline in outlines)
        {
            var ring = outline.Flattened(Chord);
            for (var i = 0; i < ring.Count; i++) edges.Add(Turned(ring[i], ring[(i + 1) % ring.Count]));
        }
        var strokes = new List<StrokeMark>();
        if (edges.Count == 0) return strokes;
        var first = Math.Ceiling(edges.Min(e => Math.Min(e.V0, e.V1)) / spacing);
        var last = Math.Floor(edges.Max(e => Math.Max(e.V0, e.V1)) / spacing);
        var crossings = new List<double>();
        for (var k = first; k <= last; k++)
        {
            var v = k * spacing;
            crossings.Clear();
            foreach (var e in edges)
            {
                if (e.V0 > v != e.V1 > v) crossings.Add(e.U0 + (v - e.V0) / (e.V1 - e.V0) * (e.U1 - e.U0));
            }
            crossings.Sort();
            for (var i = 0; i + 1 < crossings.Count; i += 2)
            {
                if (crossings[i + 1] - crossings[i] < 0.05) continue; // a speck no printer shows
                strokes.Add(StrokeMark.Line(Back(crossings[i], v), Back(crossings[i + 1], v), pen ?? Pens.Hatch, layer, of));
            }
        }
        return strokes;

        (double, double, double, double) Turned(Point2 a, Point2 b) =>
            (along.X * a.X + along.Y * a.Y, across.X * a.X + across.Y * a.Y, along.X * b.X + along.Y * b.Y, across.X * b.X + across.Y * b.Y);

        Point2 Back(double u, double v) => Point2.Origin + u * along + v * across;
    }

    /// <summary>Cross-hatching at 45 degrees both ways: waste.</summary>
    /// <inheritdoc cref="Lines" path="/param"/>
    public static IReadOnlyList<StrokeMark> Cross(
        IReadOnlyList<Path2> outlines, double spacing, Layer layer, Pen? pen = null, string? of = null) =>
    [
        .. Lines(outlines, spacing, Angle.FromDegrees(45), layer, pen, of),
        .. Lines(outlines, spacing, Angle.FromDegrees(135), layer, pen, of),
    ];
}
