using Rodwright.Geometry;

namespace Rodwright.Stairs.Turns;

/// <summary>
/// The room a left-hand turn is set out in (setting-out.md 2.1): origin on the newel's centre, incoming flight climbing +y at x &gt; 0, outgoing climbing -x at
/// y &gt; 0 after a quarter turn, or -y at x &lt; 0 after a half. Both flights have the same section.
/// </summary>
/// <param name="HalfNewel">h, half the newel's side.</param>
/// <param name="InnerFace">x_i, the inner string's face from the newel's centre.</param>
/// <param name="OuterFace">x_o, the wall string's face.</param>
/// <param name="Walking">x_w, the walking line; its arc has this radius.</param>
public sealed record TurnSite(double HalfNewel, double InnerFace, double OuterFace, double Walking)
{
    /// <summary>1 for a quarter turn, 2 for a half.</summary>
    public int Quarters { get; init; } = 1;

    /// <summary>Distance between the two newels of a half landing, mm; 0 where one newel serves.</summary>
    public double Between { get; init; }

    /// <summary>M, the length of the narrow line for given offsets: along the newel's faces and the strings beyond them, jogs not counted.</summary>
    public double NarrowLength(double firstRiser, double lastRiser) => Quarters * 2 * HalfNewel + firstRiser + lastRiser;

    /// <summary>The point a distance along the narrow line from a riser that stands <paramref name="firstRiser"/> outside the newel's centre.</summary>
    public Point2 OnNarrowLine(double firstRiser, double distance)
    {
        var h = HalfNewel;
        var u = distance - firstRiser;           // unrolled so that 0 is opposite the newel's centre
        if (u < -h) return new(InnerFace, u);
        if (u <= h) return new(h, u);
        var x = 2 * h - u;                       // from the arris on, back along face N
        if (Quarters == 1) return x >= -h ? new(x, h) : new(x, InnerFace);
        if (x >= -h) return new(x, h);
        var y = 4 * h - u;                       // and down face W
        return y >= -h ? new(-h, y) : new(-InnerFace, y);
    }

    /// <summary>Where a point of the narrow line lies along it, 0 opposite the newel's centre on face E.</summary>
    public double OnNarrowLine(Point2 p)
    {
        var h = HalfNewel;
        if (Quarters == 2 && p.X < 0 && p.Y < h - Tolerance.Same) return 4 * h - p.Y;
        if (p.Y < h - Tolerance.Same && p.X > -h) return p.Y;
        return 2 * h - p.X;
    }

    /// <summary>The point opposite on the walls: where a line from inside meets the outer faces.</summary>
    public Point2 OnWalls(Line2 outward)
    {
        var right = outward.Cross(new(new(OuterFace, 0), new(0, 1)));
        if (right is { } r && outward.Along.X > 1e-12 && r.Y <= OuterFace + Tolerance.Same) return r;
        var far = outward.Cross(new(new(0, OuterFace), new(1, 0)));
        if (far is { } f && (Quarters == 1 || (outward.Along.Y > 1e-12 && f.X >= -OuterFace - Tolerance.Same))) return f;
        return outward.Cross(new(new(-OuterFace, 0), new(0, 1))) ?? throw new System.Diagnostics.UnreachableException();
    }
}
