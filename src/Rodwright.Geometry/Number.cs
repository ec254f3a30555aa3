using System.Globalization;
using System.Text;

namespace Rodwright.Geometry;

/// <summary>The one home of number printing: invariant, never "-0", trailing zeros dropped unless asked for.</summary>
public static class Number
{
    /// <summary>Prints with at most <paramref name="decimals"/> decimals, no trailing zeros, never "-0". Ties round away from zero, as on paper.</summary>
    public static string Print(double value, int decimals = 1)
    {
        Span<char> digits = stackalloc char[Longest];
        return TryPrint(value, decimals, digits, out var count)
            ? new(digits[..count])
            : Clean(Rounded(value, decimals)).ToString(Format(decimals, '#'), CultureInfo.InvariantCulture);
    }

    /// <summary>Appends what <see cref="Print"/> prints, without making a string of it: for writers of many numbers.</summary>
    public static void Append(StringBuilder text, double value, int decimals = 1)
    {
        Span<char> digits = stackalloc char[Longest];
        if (TryPrint(value, decimals, digits, out var count)) text.Append(digits[..count]);
        else text.Append(Print(value, decimals));
    }

    /// <summary>Prints with exactly <paramref name="decimals"/> decimals, so that columns line up; never "-0".</summary>
    public static string Fixed(double value, int decimals) =>
        Clean(Rounded(value, decimals)).ToString(Format(decimals, '0'), CultureInfo.InvariantCulture);

    /// <summary>Prints so that reading gives the same double again.</summary>
    public static string Exact(double value) => Clean(value).ToString("R", CultureInfo.InvariantCulture);

    private const int Longest = 20; // of a number below a billion with its sign and decimals

    /// <summary>Rods are full of numbers of a few digits: those go as whole units of their last decimal.</summary>
    private static bool TryPrint(double value, int decimals, Span<char> digits, out int count)
    {
        count = 0;
        var power = decimals switch { 0 => 1, 1 => 10, 2 => 100, 3 => 1000, _ => 0 };
        if (power == 0 || !(Math.Abs(value) < 1e9)) return false;
        var units = (long)Math.Round(value * power + Math.CopySign(Tie, value), MidpointRounding.AwayFromZero);
        if (units < 0) digits[count++] = '-';
        var (whole, rest) = Math.DivRem(Math.Abs(units), power);
        whole.TryFormat(digits[count..], out var written, provider: CultureInfo.InvariantCulture);
        count += written;
        if (rest == 0) return true;
        digits[count++] = '.';
        for (long digit = power / 10; rest > 0; digit /= 10)
        {
            digits[count++] = (char)('0' + rest / digit);
            rest %= digit;
        }
        return true;
    }

    // What should lie half way between two printed numbers, and misses it by the noise of its last binary digits, is rounded as if it did not:
    // 168.9 + 20 × 168.9 / 240 is 182.975, and prints as 182.98. In units of the last digit printed.
    private const double Tie = 1e-7;

    private static double Rounded(double value, int decimals) => Math.Round(value + Math.CopySign(Tie * Math.Pow(10, -decimals), value), decimals, MidpointRounding.AwayFromZero);

    private static double Clean(double value) => value == 0 ? 0 : value; // also turns -0 into 0

    private static string Format(int decimals, char digit) => decimals == 0 ? "0" : "0." + new string(digit, decimals);
}
