namespace Rodwright.Geometry;

/// <summary>A displacement in the world of the stair, millimetres.</summary>
public readonly record struct Vector3(double X, double Y, double Z)
{
    /// <summary>Length, millimetres.</summary>
    public double Length => Math.Sqrt(X * X + Y * Y + Z * Z);

    /// <summary>Mirrored in the plane x = 0.</summary>
    public Vector3 Mirrored => new(-X, Y, Z);

    /// <summary>Straight up.</summary>
    public static Vector3 Up => new(0, 0, 1);

    /// <summary>A level displacement.</summary>
    public static Vector3 Level(Vector2 v) => new(v.X, v.Y, 0);

    /// <summary>Scalar product.</summary>
    public double Dot(Vector3 o) => X * o.X + Y * o.Y + Z * o.Z;

    /// <summary>Vector product, right-handed.</summary>
    public Vector3 Cross(Vector3 o) => new(Y * o.Z - Z * o.Y, Z * o.X - X * o.Z, X * o.Y - Y * o.X);

    /// <summary>Sum.</summary>
    public static Vector3 operator +(Vector3 a, Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Reversed.</summary>
    public static Vector3 operator -(Vector3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>Scaled.</summary>
    public static Vector3 operator *(double k, Vector3 a) => new(k * a.X, k * a.Y, k * a.Z);

    /// <summary>Coordinates, for debugging. (The record's own would follow derived points without end.)</summary>
    public override string ToString() => $"({Number.Print(X, 6)}, {Number.Print(Y, 6)}, {Number.Print(Z, 6)})";
}
