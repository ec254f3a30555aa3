namespace Rodwright.Geometry;

/// <summary>A rectangle square to its frame, millimetres. Empty boxes have no area and take in the first point given.</summary>
public readonly record struct Box2(double MinX, double MinY, double MaxX, double MaxY)
{
    /// <summary>A box that holds nothing.</summary>
    public static Box2 Empty => new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    /// <summary>Whether nothing was taken in.</summary>
    public bool IsEmpty => MinX > MaxX;

    /// <summary>Width along x.</summary>
    public double Width => MaxX - MinX;

    /// <summary>Height along y.</summary>
    public double Height => MaxY - MinY;

    /// <summary>The middle.</summary>
    public Point2 Centre => new((MinX + MaxX) / 2, (MinY + MaxY) / 2);

    /// <summary>The box grown to hold a point.</summary>
    public Box2 With(Point2 p) => new(Math.Min(MinX, p.X), Math.Min(MinY, p.Y), Math.Max(MaxX, p.X), Math.Max(MaxY, p.Y));

    /// <summary>The box grown to hold another.</summary>
    public Box2 With(Box2 b) => b.IsEmpty ? this : With(new Point2(b.MinX, b.MinY)).With(new Point2(b.MaxX, b.MaxY));

    /// <summary>The box grown on every side.</summary>
    public Box2 Grown(double by) => new(MinX - by, MinY - by, MaxX + by, MaxY + by);

    /// <summary>What two boxes share; of negative width or height where they share nothing.</summary>
    public Box2 Common(Box2 o) => new(Math.Max(MinX, o.MinX), Math.Max(MinY, o.MinY), Math.Min(MaxX, o.MaxX), Math.Min(MaxY, o.MaxY));

    /// <summary>Whether two boxes share area by more than <paramref name="slack"/> each way.</summary>
    public bool Overlaps(Box2 o, double slack = 0) =>
        MinX < o.MaxX - slack && o.MinX < MaxX - slack && MinY < o.MaxY - slack && o.MinY < MaxY - slack;

    /// <summary>Whether the other box lies inside this one, within <paramref name="slack"/>.</summary>
    public bool Holds(Box2 o, double slack = 0) =>
        o.MinX >= MinX - slack && o.MaxX <= MaxX + slack && o.MinY >= MinY - slack && o.MaxY <= MaxY + slack;

    /// <summary>The box round some points.</summary>
    public static Box2 Of(IEnumerable<Point2> points)
    {
        var box = Empty;
        foreach (var p in points) box = box.With(p);
        return box;
    }
}
