using System.Text;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Svg;

/// <summary>Writes paths as SVG draws them: arcs as arcs, y running down.</summary>
/// <param name="text">Where to.</param>
/// <param name="height">Where y is 0 for the picture, mm.</param>
/// <param name="decimals">Of coordinates; radii have three.</param>
internal sealed class SvgPath(StringBuilder text, double height, int decimals)
{
    private const int RadiusDecimals = 3;

    /// <summary>The path's commands, after those already there.</summary>
    public void Append(Path2 path)
    {
        text.Append('M');
        Append(path.Vertices[0].At);
        for (var i = 0; i < path.EdgeCount; i++)
        {
            var (a, b, bulge) = path.Edge(i);
            if (bulge != 0) Append(Arc2.FromBulge(a, b, bulge), b);
            else if (!path.Closed || i < path.EdgeCount - 1)
            {
                text.Append('L');
                Append(b);
            }
        }
        if (path.Closed) text.Append('Z');
    }

    /// <summary>A point: x, a space, y.</summary>
    public void Append(Point2 p)
    {
        Number.Append(text, p.X, decimals);
        text.Append(' ');
        Number.Append(text, height - p.Y, decimals);
    }

    // An arc near a half turn is written as a chord and a radius that hardly exceeds half of it, where a thousandth's rounding moves the
    // crown by tenths of a millimetre: so no piece turns more than a quarter.
    private void Append(Arc2 arc, Point2 end)
    {
        var n = Math.Max(1, (int)Math.Ceiling(Math.Abs(arc.Sweep) / (Math.PI / 2) - 1e-9));
        for (var i = 1; i <= n; i++)
        {
            text.Append('A');
            Number.Append(text, arc.Radius, RadiusDecimals);
            text.Append(' ');
            Number.Append(text, arc.Radius, RadiusDecimals);
            // y runs down here, yet the picture is the same: what ran anticlockwise to the eye still does (sweep flag 0).
            text.Append(arc.Sweep > 0 ? " 0 0 0 " : " 0 0 1 ");
            Append(i == n ? end : arc.At((double)i / n));
        }
    }
}
