namespace Rodwright.Geometry;

/// <summary>A point in a plane, millimetres; which plane is said where it is used.</summary>
public readonly record struct Point2(double X, double Y)
{
    /// <summary>The origin.</summary>
    public static Point2 Origin => default;

    /// <summary>Distance to another point.</summary>
    public double DistanceTo(Point2 other) => (other - this).Length;

    /// <summary>The point part of the way to another: 0 is here, 1 is there.</summary>
    public Point2 Towards(Point2 other, double part) => new(X + (other.X - X) * part, Y + (other.Y - Y) * part);

    /// <summary>Mirrored in the y axis (x changes sign).</summary>
    public Point2 Mirrored => new(-X, Y);

    /// <summary>Whether both points are one point within <see cref="Tolerance.Same"/>.</summary>
    public bool IsSame(Point2 other) => DistanceTo(other) <= Tolerance.Same;

    /// <summary>Moved by a displacement.</summary>
    public static Point2 operator +(Point2 p, Vector2 v) => new(p.X + v.X, p.Y + v.Y);

    /// <summary>Moved back by a displacement.</summary>
    public static Point2 operator -(Point2 p, Vector2 v) => new(p.X - v.X, p.Y - v.Y);

    /// <summary>The displacement from b to a.</summary>
    public static Vector2 operator -(Point2 a, Point2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Coordinates, for debugging. (The record's own would follow derived points without end.)</summary>
    public override string ToString() => $"({Number.Print(X, 3)}, {Number.Print(Y, 3)})";
}
