namespace Rodwright.Geometry;

/// <summary>A circular arc: centre, radius, start direction and signed sweep in radians (positive anticlockwise).</summary>
public readonly record struct Arc2(Point2 Centre, double Radius, double Start, double Sweep)
{
    /// <summary>Length along the arc.</summary>
    public double Length => Math.Abs(Sweep) * Radius;

    /// <summary>The point a part of the way along: 0 the start, 1 the end.</summary>
    public Point2 At(double part) => Centre + Radius * Vector2.At(Start + Sweep * part);

    /// <summary>
    /// The arc between two points with a bulge, where bulge = tan(sweep/4), positive anticlockwise: the measure the open DXF format uses for arcs in polylines.
    /// </summary>
    /// <exception cref="ArgumentException">The bulge is zero: that is a straight line.</exception>
    public static Arc2 FromBulge(Point2 from, Point2 to, double bulge)
    {
        if (bulge == 0) throw new ArgumentException("a bulge of zero is a straight line", nameof(bulge));
        var chord = to - from;
        var sweep = 4 * Angle.Atan(bulge);
        var radius = chord.Length / (2 * Math.Abs(Angle.Sin(sweep / 2)));
        // The centre lies on the chord's bisector; its distance is signed so that more than a half turn also works.
        var height = chord.Length / 2 * (1 - bulge * bulge) / (2 * bulge);
        var centre = from.Towards(to, 0.5) + height * chord.Unit.Left;
        return new(centre, radius, (from - centre).Direction, sweep);
    }

    /// <summary>The bulge of the arc that starts at <paramref name="from"/>, passes through <paramref name="via"/> and ends at <paramref name="to"/>; 0 when the three lie in line.</summary>
    public static double BulgeThrough(Point2 from, Point2 via, Point2 to)
    {
        // The angle at the middle point between the two chords is pi less half the sweep.
        var a = from - via;
        var b = to - via;
        if (Math.Abs(a.Cross(b)) <= 1e-9 * a.Length * b.Length) return 0;
        var half = Math.PI - Math.Abs(Angle.Atan2(a.Cross(b), a.Dot(b)));
        var side = (to - from).Cross(via - from) < 0 ? 1 : -1;
        return side * Angle.Tan(half / 2);
    }
}
