using System.Globalization;

namespace Rodwright.Geometry;

/// <summary>The one home of number printing: invariant, never "-0", trailing zeros dropped unless asked for.</summary>
public static class Number
{
    /// <summary>Prints with at most <paramref name="decimals"/> decimals, no trailing zeros, never "-0". Ties round away from zero, as on paper.</summary>
    public static string Print(double value, int decimals = 1) =>
        Clean(Math.Round(value, decimals, MidpointRounding.AwayFromZero)).ToString(Format(decimals, '#'), CultureInfo.InvariantCulture);

    /// <summary>Prints with exactly <paramref name="decimals"/> decimals, so that columns line up; never "-0".</summary>
    public static string Fixed(double value, int decimals) =>
        Clean(Math.Round(value, decimals, MidpointRounding.AwayFromZero)).ToString(Format(decimals, '0'), CultureInfo.InvariantCulture);

    /// <summary>Prints so that reading gives the same double again.</summary>
    public static string Exact(double value) => Clean(value).ToString("R", CultureInfo.InvariantCulture);

    private static double Clean(double value) => value == 0 ? 0 : value; // also turns -0 into 0

    private static string Format(int decimals, char digit) => decimals == 0 ? "0" : "0." + new string(digit, decimals);
}
