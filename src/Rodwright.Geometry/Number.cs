using System.Globalization;
using System.Text;

namespace Rodwright.Geometry;

/// <summary>The one home of number printing: invariant, never "-0", trailing zeros dropped unless asked for.</summary>
public static class Number
{
    /// <summary>Prints with at most <paramref name="decimals"/> decimals, no trailing zeros, never "-0". Ties round away from zero, as on paper.</summary>
    public static string Print(double value, int decimals = 1) =>
        Clean(Math.Round(value, decimals, MidpointRounding.AwayFromZero)).ToString(Format(decimals, '#'), CultureInfo.InvariantCulture);

    /// <summary>Appends what <see cref="Print"/> prints, without making a string of it: for writers of many numbers.</summary>
    public static void Append(StringBuilder text, double value, int decimals)
    {
        var power = decimals switch { 0 => 1L, 1 => 10, 2 => 100, 3 => 1000, _ => 0 };
        var scaled = Math.Round(value * power, MidpointRounding.AwayFromZero);
        if (power == 0 || !(Math.Abs(scaled) < 1e15))
        {
            text.Append(Print(value, decimals));
            return;
        }
        var whole = (long)scaled;
        if (whole < 0)
        {
            text.Append('-');
            whole = -whole;
        }
        text.Append(whole / power);
        var rest = whole % power;
        if (rest == 0) return;
        text.Append('.');
        for (var digit = power / 10; rest > 0; digit /= 10)
        {
            text.Append((char)('0' + rest / digit));
            rest %= digit;
        }
    }

    /// <summary>Prints with exactly <paramref name="decimals"/> decimals, so that columns line up; never "-0".</summary>
    public static string Fixed(double value, int decimals) =>
        Clean(Math.Round(value, decimals, MidpointRounding.AwayFromZero)).ToString(Format(decimals, '0'), CultureInfo.InvariantCulture);

    /// <summary>Prints so that reading gives the same double again.</summary>
    public static string Exact(double value) => Clean(value).ToString("R", CultureInfo.InvariantCulture);

    private static double Clean(double value) => value == 0 ? 0 : value; // also turns -0 into 0

    private static string Format(int decimals, char digit) => decimals == 0 ? "0" : "0." + new string(digit, decimals);
}
