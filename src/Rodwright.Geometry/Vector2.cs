namespace Rodwright.Geometry;

/// <summary>A displacement in a plane, millimetres.</summary>
public readonly record struct Vector2(double X, double Y)
{
    /// <summary>Length, millimetres.</summary>
    public double Length => Math.Sqrt(X * X + Y * Y);

    /// <summary>The same direction with length 1; undefined (not finite) for the zero vector.</summary>
    public Vector2 Unit { get { var l = Length; return new(X / l, Y / l); } }

    /// <summary>Turned a quarter turn anticlockwise.</summary>
    public Vector2 Left => new(-Y, X);

    /// <summary>Turned a quarter turn clockwise.</summary>
    public Vector2 Right => new(Y, -X);

    /// <summary>Direction in radians, -pi to pi, anticlockwise from +x.</summary>
    public double Direction => Angle.Atan2(Y, X);

    /// <summary>Scalar product.</summary>
    public double Dot(Vector2 other) => X * other.X + Y * other.Y;

    /// <summary>z of the vector product: positive when <paramref name="other"/> lies to the left.</summary>
    public double Cross(Vector2 other) => X * other.Y - Y * other.X;

    /// <summary>The unit vector at an angle anticlockwise from +x.</summary>
    public static Vector2 At(double radians) => new(Angle.Cos(radians), Angle.Sin(radians));

    /// <summary>Sum.</summary>
    public static Vector2 operator +(Vector2 a, Vector2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference.</summary>
    public static Vector2 operator -(Vector2 a, Vector2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Reversed.</summary>
    public static Vector2 operator -(Vector2 a) => new(-a.X, -a.Y);

    /// <summary>Scaled.</summary>
    public static Vector2 operator *(double k, Vector2 a) => new(k * a.X, k * a.Y);

    /// <summary>Coordinates, for debugging. (The record's own would follow derived points without end.)</summary>
    public override string ToString() => $"({Number.Print(X, 6)}, {Number.Print(Y, 6)})";
}
