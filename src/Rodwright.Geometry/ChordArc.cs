namespace Rodwright.Geometry;

/// <summary>
/// An arc seen from its chord: x along the chord from its middle, y to the left of it. Nothing is measured from the centre, so nothing is lost to rounding
/// however shallow the arc is and however far off its centre lies.
/// </summary>
internal readonly struct ChordArc
{
    private readonly Point2 from;
    private readonly Point2 middle;
    private readonly Vector2 along;
    private readonly double half; // of the chord
    private readonly double bulge;
    private readonly double rise; // y of the centre

    /// <summary>The arc between two different points; its bulge is not zero.</summary>
    public ChordArc(Point2 from, Point2 to, double bulge)
    {
        this.from = from;
        this.bulge = bulge;
        middle = from.Towards(to, 0.5);
        along = (to - from).Unit;
        half = from.DistanceTo(to) / 2;
        rise = half * (1 - bulge * bulge) / (2 * bulge);
        Radius = half * (1 + bulge * bulge) / (2 * Math.Abs(bulge));
        Sweep = 4 * Angle.Atan(bulge);
    }

    /// <summary>Of its circle.</summary>
    public double Radius { get; }

    /// <summary>Signed, radians, positive anticlockwise.</summary>
    public double Sweep { get; }

    /// <summary>Along the arc.</summary>
    public double Length => Radius * Math.Abs(Sweep);

    /// <summary>Area between the chord and the arc, signed as the sweep is.</summary>
    public double SegmentArea
    {
        get
        {
            // Sweep less its sine; for a shallow arc by its series, for the two are then all but one number.
            var square = Sweep * Sweep;
            var excess = square < 0.01 ? Sweep * square / 6 * (1 - square / 20 * (1 - square / 42 * (1 - square / 72))) : Sweep - Angle.Sin(Sweep);
            return Radius * Radius * excess / 2;
        }
    }

    /// <summary>Radians, of the direction from the centre to the start.</summary>
    public double Start => (-half * along - rise * along.Left).Direction;

    /// <summary>How many equal chords stand for the arc if none may leave it by more than <paramref name="most"/>: two at least.</summary>
    public int Chords(double most)
    {
        var step = 2 * Angle.Acos(1 - Math.Min(1, most / Radius));
        return Math.Max(2, (int)Math.Ceiling(Math.Abs(Sweep) / step));
    }

    /// <summary>The point a part of the way along: 0 the start, 1 the end.</summary>
    public Point2 At(double part)
    {
        // The line from the start turns by half of what the arc does, and 2 bulge / (1 + bulge²) is the sine of half the sweep.
        var chord = half * Angle.Sin(Sweep * part / 2) * (1 + bulge * bulge) / bulge;
        var turn = Vector2.At(Sweep * (part - 1) / 2);
        return from + chord * (turn.X * along + turn.Y * along.Left);
    }

    /// <summary>How far a point lies outside the arc's circle (negative: within it).</summary>
    public double Outside(Point2 p)
    {
        var (x, y) = Local(p);
        return Power(x, y) / (Radius + Math.Sqrt(x * x + (y - rise) * (y - rise)));
    }

    /// <summary>Whether a point lies on the arc, or as near it as <paramref name="near"/>.</summary>
    public bool Holds(Point2 p, double near)
    {
        var (x, y) = Local(p);
        // The chord parts its circle in two, and the arc is what lies on its own side.
        return Math.Abs(Outside(p)) <= near && y * Math.Sign(bulge) <= near && (Math.Abs(bulge) >= 1 || Math.Abs(x) <= half + near);
    }

    /// <summary>Distance of a point from the nearest of the arc.</summary>
    public double DistanceTo(Point2 p)
    {
        var (x, y) = Local(p);
        // On which sides of the two radii to its ends the point lies: within both, or (an arc of more than half a turn) within either.
        var side = Math.Sign(bulge);
        var (first, last) = (side * (rise * x - half * (y - rise)), side * (-rise * x - half * (y - rise)));
        var within = Math.Abs(bulge) <= 1 ? first >= 0 && last >= 0 : first >= 0 || last >= 0;
        return within ? Math.Abs(Outside(p)) : Math.Sqrt((Math.Abs(x) - half) * (Math.Abs(x) - half) + y * y);
    }

    /// <summary>How far it is from a point of the chord along a unit direction, or back against it, to the arc's side of the circle.</summary>
    public double Reach(Point2 onChord, Vector2 direction)
    {
        var ((x, y), dx, dy) = (Local(onChord), along.Dot(direction), along.Cross(direction));
        var (b, power) = (x * dx + (y - rise) * dy, Math.Min(0, Power(x, y)));
        var root = Math.Sqrt(b * b - power);
        // The two crossings lie either way; each is taken in the form in which nothing cancels.
        if (bulge * dy < 0) return b <= 0 ? root - b : -power / (root + b);
        return b >= 0 ? -root - b : power / (root - b);
    }

    /// <summary>How far along a unit direction from a point its line crosses the arc's circle: twice, or not at all.</summary>
    public IEnumerable<double> Crossings(Point2 p, Vector2 direction)
    {
        var ((x, y), dx, dy) = (Local(p), along.Dot(direction), along.Cross(direction));
        var (b, power) = (x * dx + (y - rise) * dy, Power(x, y));
        var square = b * b - power;
        // A line that touches the circle, but for rounding.
        if (square < -1e-9 * Radius * Radius) return [];
        var far = -b - (b < 0 ? -1 : 1) * Math.Sqrt(Math.Max(0, square));
        return far == 0 ? [0] : [far, power / far];
    }

    /// <summary>Signed turn about the centre from one point of the arc to another less than half a turn on, radians.</summary>
    public double Turn(Point2 a, Point2 b)
    {
        var ((ax, ay), (bx, by)) = (Local(a), Local(b));
        return Angle.Atan2(ax * by - ay * bx + rise * (bx - ax), ax * bx + (ay - rise) * (by - rise));
    }

    private double Power(double x, double y) => (x - half) * (x + half) + y * y - 2 * rise * y;

    private (double X, double Y) Local(Point2 p) => (along.Dot(p - middle), along.Cross(p - middle));
}
