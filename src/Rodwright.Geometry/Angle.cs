namespace Rodwright.Geometry;

/// <summary>
/// An angle, kept in radians, always finite. The default value is zero. This type is also the project's one home of trigonometry.
/// </summary>
public readonly record struct Angle : IComparable<Angle>
{
    private readonly double radians;

    private Angle(double radians)
    {
        if (!double.IsFinite(radians)) throw new ArgumentOutOfRangeException(nameof(radians), radians, "an angle is finite");
        this.radians = radians;
    }

    /// <summary>The angle in radians.</summary>
    public double Radians => radians;

    /// <summary>The angle in degrees.</summary>
    public double Degrees => radians * (180 / Math.PI);

    /// <summary>The sine.</summary>
    public double Sine => Sin(radians);

    /// <summary>The cosine.</summary>
    public double Cosine => Cos(radians);

    /// <summary>The tangent.</summary>
    public double Tangent => Tan(radians);

    /// <summary>An angle given in radians.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Angle FromRadians(double radians) => new(radians);

    /// <summary>An angle given in degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Angle FromDegrees(double degrees) => new(degrees * (Math.PI / 180));

    /// <summary>The pitch of a line that rises <paramref name="rise"/> over <paramref name="going"/>: atan(rise/going), -180 to 180 degrees.</summary>
    public static Angle OfPitch(double rise, double going) => new(Atan2(rise, going));

    /// <summary>Sine of an angle in radians.</summary>
#pragma warning disable RS0030 // The one home of trigonometry.
    public static double Sin(double radians) => Math.Sin(radians);

    /// <summary>Cosine of an angle in radians.</summary>
    public static double Cos(double radians) => Math.Cos(radians);

    /// <summary>Tangent of an angle in radians.</summary>
    public static double Tan(double radians) => Math.Tan(radians);

    /// <summary>Arc sine in radians; the argument is held to -1..1 so that rounding cannot make it undefined.</summary>
    public static double Asin(double sine) => Math.Asin(Math.Clamp(sine, -1, 1));

    /// <summary>Arc cosine in radians; the argument is held to -1..1 so that rounding cannot make it undefined.</summary>
    public static double Acos(double cosine) => Math.Acos(Math.Clamp(cosine, -1, 1));

    /// <summary>Arc tangent in radians, -pi/2 to pi/2.</summary>
    public static double Atan(double tangent) => Math.Atan(tangent);

    /// <summary>Direction of (x, y) in radians, -pi to pi.</summary>
    public static double Atan2(double y, double x) => Math.Atan2(y, x);
#pragma warning restore RS0030

    /// <inheritdoc/>
    public int CompareTo(Angle other) => radians.CompareTo(other.radians);

    /// <summary>Degrees with two decimals, for debugging; sheets print through <see cref="Number"/>.</summary>
    public override string ToString() => Number.Print(Degrees, 2) + "°";
}
