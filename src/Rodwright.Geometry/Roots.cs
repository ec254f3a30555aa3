using MathNet.Numerics.RootFinding;

namespace Rodwright.Geometry;

/// <summary>Root finding in one unknown, done by Math.NET Numerics (Brent's method) behind this door.</summary>
public static class Roots
{
    /// <summary>
    /// A root of <paramref name="f"/> between two places where it has opposite signs, to 1e-12; null when the signs are equal or the search does not settle.
    /// </summary>
    public static double? Between(Func<double, double> f, double low, double high) =>
        Brent.TryFindRoot(f, low, high, 1e-12, 200, out var root) ? root : null;
}
