using Rodwright.Geometry;

namespace Rodwright.Stairs.Turns;

/// <summary>
/// The room a left-hand quarter turn is set out in (setting-out.md 2.1): origin on the newel's centre, incoming flight climbing +y at x &gt; 0,
/// outgoing climbing -x at y &gt; 0. Both flights have the same section.
/// </summary>
/// <param name="HalfNewel">h, half the newel's side.</param>
/// <param name="InnerFace">x_i, the inner string's face from the newel's centre line.</param>
/// <param name="OuterFace">x_o, the wall string's face.</param>
/// <param name="Walking">x_w, the walking line; its arc has this radius.</param>
public sealed record TurnSite(double HalfNewel, double InnerFace, double OuterFace, double Walking)
{
    /// <summary>M, the length of the narrow line for given offsets: along the newel's two faces and the strings beyond them, jogs not counted.</summary>
    public double NarrowLength(double firstRiser, double lastRiser) => 2 * HalfNewel + firstRiser + lastRiser;

    /// <summary>The point a distance along the narrow line from the first riser.</summary>
    public Point2 OnNarrowLine(double firstRiser, double distance)
    {
        var h = HalfNewel;
        var y = distance - firstRiser;           // unrolled so that 0 is opposite the newel's centre
        if (y < -h) return new(InnerFace, y);
        if (y <= h) return new(h, y);
        var x = 2 * h - y;                       // from the arris on, back along face N
        return x >= -h ? new(x, h) : new(x, InnerFace);
    }

    /// <summary>The point opposite on the walls: where a line from inside meets the outer faces.</summary>
    public Point2 OnWalls(Line2 outward)
    {
        var right = outward.Cross(new(new(OuterFace, 0), new(0, 1)));
        if (right is { } r && outward.Along.X > 1e-12 && r.Y <= OuterFace + Tolerance.Same) return r;
        return outward.Cross(new(new(0, OuterFace), new(1, 0))) ?? throw new System.Diagnostics.UnreachableException();
    }
}
