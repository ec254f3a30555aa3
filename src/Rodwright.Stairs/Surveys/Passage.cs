using Rodwright.Geometry;

namespace Rodwright.Stairs.Surveys;

/// <summary>
/// Whether a straight piece, taken as the box round it, passes a door or a square turn between two passages. Derived here; each criterion is compared with a search in the tests.
/// </summary>
public static class Passage
{
    /// <summary>Whether a box passes a place, carried in whichever way suits it best.</summary>
    public static bool Passes(WayInStop stop, double length, double width, double thickness)
    {
        if (stop.Kind == WayInKind.Door) return Through(width, thickness, stop.Width, stop.Height);
        return RoundOn(stop, length, thickness, width) || RoundOn(stop, length, width, thickness);
    }

    /// <summary>The longest box of a section that passes; null when a door lets any length through; 0 when the section itself does not pass.</summary>
    public static double? Longest(WayInStop stop, double width, double thickness)
    {
        if (stop.Kind == WayInKind.Door) return Through(width, thickness, stop.Width, stop.Height) ? null : 0;
        var (low, high) = (0.0, 4 * (stop.Width + (stop.WidthOut ?? 0) + stop.Height));
        if (!Passes(stop, low, width, thickness)) return 0;
        // A box that passes passes cut shorter too, so that halving finds the longest.
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (Passes(stop, middle, width, thickness)) low = middle;
            else high = middle;
        }
        return low;
    }

    /// <summary>
    /// Whether a rectangle p by q passes through an opening a by b, turned in it if need be. Square on it passes when neither side is larger; else the longer side p > a must stand slanted
    /// so that both its corners touch: p cos t + q sin t = a, and then p sin t + q cos t must be within b, which gives the quadratic below.
    /// </summary>
    public static bool Through(double p, double q, double a, double b)
    {
        if (p < q) (p, q) = (q, p);
        if (a < b) (a, b) = (b, a);
        if (q > b) return false;
        if (p <= a) return true;
        var square = p * p + q * q - a * a;
        return square >= 0 && b >= (2 * p * q * a + (p * p - q * q) * Math.Sqrt(square)) / (p * p + q * q);
    }

    /// <summary>
    /// The longest plank of a thickness that turns from one passage into the other, level. With its outer edge on both outer walls at an angle t to the first, the inner corner leaves room for the thickness as long as
    /// a sin t + b cos t - L sin t cos t >= thickness; L is the least of (a sin t + b cos t - thickness) / (sin t cos t). Its derivative has the sign of
    /// a sin³t - b cos³t + thickness (cos²t - sin²t), which changes once between 0 and 90 degrees when the thickness is less than both widths, so that halving finds it. For no thickness it is (a^2/3 + b^2/3)^3/2.
    /// </summary>
    /// <returns>mm; 0 when the thickness itself does not fit.</returns>
    public static double LongestLevel(double thickness, double a, double b)
    {
        if (thickness >= Math.Min(a, b)) return 0;
        var (low, high) = (0.0, Math.PI / 2);
        for (var i = 0; i < 60; i++)
        {
            var t = (low + high) / 2;
            var (s, c) = (Angle.Sin(t), Angle.Cos(t));
            if (a * s * s * s - b * c * c * c + thickness * (c * c - s * s) < 0) low = t;
            else high = t;
        }
        var (sine, cosine) = (Angle.Sin(low), Angle.Cos(low));
        return (a * sine + b * cosine - thickness) / (sine * cosine);
    }

    /// <summary>
    /// Round a turn with one side upright: level, or tilted as far as the ceiling lets it. Tilted by t it takes L cos t + V sin t in plan and L sin t + V cos t in height; between level and
    /// the steepest tilt the length in plan first grows and then falls, so that one of these two is the shortest.
    /// </summary>
    private static bool RoundOn(WayInStop stop, double length, double inPlan, double upright)
    {
        if (upright > stop.Height) return false;
        var longest = LongestLevel(inPlan, stop.Width, stop.WidthOut ?? stop.Width);
        if (longest <= 0) return false;
        if (length <= longest) return true;
        var diagonal = Math.Sqrt(length * length + upright * upright);
        if (diagonal <= stop.Height || length <= stop.Height && upright <= longest) return true;
        var (lean, most) = (Angle.Atan2(upright, length), Angle.Asin(stop.Height / diagonal));
        var tilt = most - lean;
        return tilt > 0 && length * Angle.Cos(tilt) + upright * Angle.Sin(tilt) <= longest;
    }
}
