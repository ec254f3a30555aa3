using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>A rectangle at any angle, for questions of overlap between lettering and lines.</summary>
internal readonly struct TurnedBox
{
    private readonly Point2 corner;
    private readonly Vector2 x;
    private readonly Vector2 y;
    private readonly double width;
    private readonly double height;

    public TurnedBox(Point2 corner, Vector2 x, double width, double height)
    {
        this.corner = corner;
        this.x = x;
        y = x.Left;
        this.width = width;
        this.height = height;
        Bounds = Box2.Empty.With(corner).With(corner + width * x).With(corner + width * x + height * y).With(corner + height * y);
    }

    private TurnedBox(in TurnedBox shape, Vector2 by)
    {
        this = shape;
        corner += by;
        Bounds = new(Bounds.MinX + by.X, Bounds.MinY + by.Y, Bounds.MaxX + by.X, Bounds.MaxY + by.Y);
    }

    public Box2 Bounds { get; }

    public Point2[] Corners => [corner, corner + width * x, corner + width * x + height * y, corner + height * y];

    public static TurnedBox Of(Box2 box) => new(new(box.MinX, box.MinY), new(1, 0), box.Width, box.Height);

    /// <summary>The ink box of a text, grown on every side (negative shrinks).</summary>
    public static TurnedBox Of(TextMark text, double grown = 0)
    {
        var c = text.Corners;
        var along = c[1] - c[0];
        var unit = along.Length > 0 ? along.Unit : new Vector2(1, 0);
        return new(c[0] - grown * unit - grown * unit.Left, unit, Math.Max(0, along.Length + 2 * grown), Math.Max(0, c[0].DistanceTo(c[3]) + 2 * grown));
    }

    /// <summary>The box moved.</summary>
    public TurnedBox Moved(Vector2 by) => new(this, by);

    /// <summary>Whether two boxes share area.</summary>
    public bool Overlaps(in TurnedBox other) => Bounds.Overlaps(other.Bounds) && !SplitBy(other) && !other.SplitBy(this);

    /// <summary>Whether a straight line passes through the inside.</summary>
    public bool IsCrossedBy(Point2 a, Point2 b)
    {
        // Clip the line to the box in the box's own frame.
        var (pa, pb) = (a - corner, b - corner);
        var (u0, v0, u1, v1) = (x.Dot(pa), y.Dot(pa), x.Dot(pb), y.Dot(pb));
        var (from, to) = (0.0, 1.0);
        return Within(u0, u1 - u0, width, ref from, ref to) && Within(v0, v1 - v0, height, ref from, ref to) && from < to;
    }

    private static bool Within(double start, double change, double size, ref double from, ref double to)
    {
        if (Math.Abs(change) < 1e-12) return start > 0 && start < size;
        var (t0, t1) = (-start / change, (size - start) / change);
        from = Math.Max(from, Math.Min(t0, t1));
        to = Math.Min(to, Math.Max(t0, t1));
        return from < to;
    }

    // Whether one of this box's own axes separates the two.
    private bool SplitBy(in TurnedBox other)
    {
        double u0 = double.MaxValue, u1 = double.MinValue, v0 = double.MaxValue, v1 = double.MinValue;
        foreach (var p in other.Corners)
        {
            var d = p - corner;
            var (u, v) = (x.Dot(d), y.Dot(d));
            (u0, u1, v0, v1) = (Math.Min(u0, u), Math.Max(u1, u), Math.Min(v0, v), Math.Max(v1, v));
        }
        const double slack = 1e-9;
        return u1 <= slack || u0 >= width - slack || v1 <= slack || v0 >= height - slack;
    }
}
