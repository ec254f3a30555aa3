using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Pdf;

/// <summary>Circular arcs as cubic curves, for formats without arcs.</summary>
internal static class ArcBeziers
{
    /// <summary>
    /// The curves of an arc: two controls and an end for each. Curves turn 30 degrees at most, which leaves the true arc by less than
    /// 4e-7 of its radius: two thousandths of a millimetre on a radius of five metres.
    /// </summary>
    public static IEnumerable<(Point2 Control1, Point2 Control2, Point2 End)> Of(Arc2 arc, Point2 end)
    {
        var n = Math.Max(1, (int)Math.Ceiling(Math.Abs(arc.Sweep) / (Math.PI / 6) - 1e-9));
        var step = arc.Sweep / n;
        var reach = 4.0 / 3 * Angle.Tan(step / 4) * arc.Radius;
        var from = Vector2.At(arc.Start);
        for (var i = 1; i <= n; i++)
        {
            var to = Vector2.At(arc.Start + i * step);
            var (a, b) = (arc.Centre + arc.Radius * from, i == n ? end : arc.Centre + arc.Radius * to);
            yield return (a + reach * from.Left, b - reach * to.Left, b);
            from = to;
        }
    }
}
