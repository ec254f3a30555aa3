namespace Rodwright.Geometry;

/// <summary>A point in the world of the stair: x right, y up the page, z up; millimetres.</summary>
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>The plan of the point: z left out.</summary>
    public Point2 Plan => new(X, Y);

    /// <summary>Distance to another point.</summary>
    public double DistanceTo(Point3 other) => (other - this).Length;

    /// <summary>Mirrored in the plane x = 0.</summary>
    public Point3 Mirrored => new(-X, Y, Z);

    /// <summary>Moved by a displacement.</summary>
    public static Point3 operator +(Point3 p, Vector3 v) => new(p.X + v.X, p.Y + v.Y, p.Z + v.Z);

    /// <summary>The displacement from b to a.</summary>
    public static Vector3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Coordinates, for debugging. (The record's own would follow derived points without end.)</summary>
    public override string ToString() => $"({Number.Print(X, 3)}, {Number.Print(Y, 3)}, {Number.Print(Z, 3)})";
}
