namespace Rodwright.Geometry;

/// <summary>The one home of every tolerance, in millimetres unless said otherwise.</summary>
public static class Tolerance
{
    /// <summary>Two points closer than this are one point: 1e-7 mm, far below anything cut and far above rounding of doubles at house size.</summary>
    public const double Same = 1e-7;

    /// <summary>
    /// A bulge this small is straight: 1e-8, 5 millionths of a millimetre in a metre. A shallower arc has its centre so far off that rounding there
    /// exceeds its own sagitta.
    /// </summary>
    public const double Straight = 1e-8;

    /// <summary>Corners of a solid closer than this become one: 1e-5 mm, a thousandth of what a joint must keep.</summary>
    public const double Weld = 1e-5;

    /// <summary>How closely the two parts of a joint must coincide: 0.01 mm (the project's own rule).</summary>
    public const double Joint = 0.01;

    /// <summary>How closely a printed or exported length must read back: 0.05 mm (the project's own rule).</summary>
    public const double Print = 0.05;

    /// <summary>How far a chord may leave the arc it stands for, where a format has no arcs: 0.005 mm.</summary>
    public const double Chord = 0.005;

    /// <summary>Whether two lengths are one length (within <see cref="Same"/>).</summary>
    public static bool IsSame(double a, double b) => Math.Abs(a - b) <= Same;
}
