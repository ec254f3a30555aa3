using System.Globalization;

namespace Rodwright.Geometry;

/// <summary>
/// Feet, inches and fractions as the trade writes them: 9' 1 3/4", 10-1/4, 1 1/8, 10.25, 9 ft 1 in, 6'8. Conversion is exact: sums are made in whole fractions or decimals, and rounded once, to
/// the nearest double of millimetres.
/// </summary>
internal static class InchText
{
    private const int Longest = 40;
    private const int MostDenominator = 1024;

    /// <summary>Reads a length in inches to millimetres; false for anything that is not one. A minus before the whole is allowed, inside it joins inches and fraction.</summary>
    public static bool TryRead(string text, out double value)
    {
        value = 0;
        if (text.Length > Longest) return false;
        var written = Plain(text);
        var negative = written.StartsWith('-');
        if (negative || written.StartsWith('+')) written = written[1..].TrimStart();
        var feet = 0m;
        if (written.IndexOf('\'', StringComparison.Ordinal) is >= 0 and var mark)
        {
            if (!IsNumber(written[..mark].Trim(), out feet)) return false;
            written = written[(mark + 1)..].Trim().TrimStart('-').Trim();
            if (written.Length == 0) return Exactly(12 * feet, 1, negative, out value);
        }
        if (written.EndsWith('"')) written = written[..^1].TrimEnd();
        if (!Inches(written, out var inches, out var denominator)) return false;
        // 9' 13" is a slip of the tape: nobody knows which of the two figures is wrong.
        return (feet == 0 || inches < 12m * denominator) && Exactly(12 * feet * denominator + inches, denominator, negative, out value);
    }

    /// <summary>Millimetres as a text of inches that reads back as the same double, without the inch mark.</summary>
    public static string Write(double value)
    {
        var sign = value < 0 ? "-" : "";
        var size = Math.Abs(value);
        if (!(size < 1e12)) return Number.Exact(value / Units.Inch); // no job holds such a length
        foreach (var parts in (ReadOnlySpan<int>)[16, 64])
        {
            var count = Math.Round(size / Units.Inch * parts);
            if (count < 1e9 && sign + Marked((long)count, parts, 48) is var text && TryRead(text, out var read) && read == value) return text;
        }
        // Seventeen digits always suffice for a double; a few more are there because decimals of an inch are not decimals of a millimetre.
        var inches = decimal.Parse(value.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture) / 25.4m;
        for (var digits = 1; digits < 28; digits++)
            if (decimal.Round(inches, digits).ToString(CultureInfo.InvariantCulture) is var text && TryRead(text, out var read) && read == value) return text;
        return inches.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>So many parts of an inch with their foot mark, and the fraction in its lowest terms: 9' 1 3/4, 10 1/4, 3/8, 0.</summary>
    public static string Marked(long count, int parts, int feetFrom)
    {
        var (inches, rest) = Math.DivRem(count, parts);
        var feet = inches >= feetFrom ? inches / 12 : 0;
        inches -= 12 * feet;
        while (rest > 0 && rest % 2 == 0) (rest, parts) = (rest / 2, parts / 2);
        var fraction = rest > 0 ? $"{Whole(rest)}/{Whole(parts)}" : "";
        var said = (inches, fraction.Length) switch
        {
            (0, > 0) when feet == 0 => fraction,
            (_, 0) => Whole(inches),
            _ => $"{Whole(inches)} {fraction}",
        };
        return feet > 0 ? $"{Whole(feet)}' {said}" : said;
    }

    /// <summary>Primes, quotes and words for foot and inch as ' and ", fraction characters as digits.</summary>
    private static string Plain(string text)
    {
        var plain = text.Trim().ToLowerInvariant()
            .Replace("''", "\"", StringComparison.Ordinal).Replace("′′", "\"", StringComparison.Ordinal);
        foreach (var (written, meant) in Spellings) plain = plain.Replace(written, meant, StringComparison.Ordinal);
        return plain.Trim();
    }

    private static readonly (string Written, string Meant)[] Spellings =
    [
        ("″", "\""), ("”", "\""), ("“", "\""), ("′", "'"), ("’", "'"), ("‘", "'"), ("–", "-"), ("−", "-"), ("‑", "-"), ("⁄", "/"), ("\u00A0", " "), ("\u2009", " "), ("\u202F", " "),
        ("½", " 1/2"), ("¼", " 1/4"), ("¾", " 3/4"), ("⅛", " 1/8"), ("⅜", " 3/8"), ("⅝", " 5/8"), ("⅞", " 7/8"), ("⅓", " 1/3"), ("⅔", " 2/3"),
        ("inches", "\""), ("inch", "\""), ("in.", "\""), ("in", "\""), ("feet", "'"), ("foot", "'"), ("ft.", "'"), ("ft", "'"),
    ];

    /// <summary>10, 10.25, 3/8, 10 3/8 or 10-3/8 as a count of parts.</summary>
    private static bool Inches(string text, out decimal count, out int denominator)
    {
        (count, denominator) = (0, 1);
        if (text.IndexOf('/', StringComparison.Ordinal) is >= 0 and var slash)
        {
            if (!IsWhole(text[(slash + 1)..].Trim(), out var parts) || parts is 0 or > MostDenominator) return false;
            var before = text[..slash].TrimEnd();
            var gap = before.LastIndexOfAny([' ', '-']);
            if (!IsWhole(before[(gap + 1)..], out var over)) return false;
            var whole = 0L;
            // 10-1/4, 10 1/4, 10 -1/4 and 10 - 1/4, but not 10--1/4.
            var left = gap < 0 ? "" : before[..gap].TrimEnd();
            if (gap >= 0 && before[gap] == ' ' && left.EndsWith('-')) left = left[..^1].TrimEnd();
            if (gap >= 0 && !IsWhole(left, out whole)) return false;
            // 10 9/8 is a slip, 9/8 alone is how somebody counts.
            if (gap >= 0 && over >= parts) return false;
            denominator = (int)parts;
            count = (decimal)whole * parts + over;
            return true;
        }
        return IsNumber(text, out count);
    }

    private static bool Exactly(decimal count, int denominator, bool negative, out double value)
    {
        // 25.4 is 127 fifths: numerator and denominator stay whole, or short decimals, and are divided once.
        var over = count * 127m;
        value = 0;
        if (over >= 7e27m) return false;
        value = decimal.IsInteger(over) && over < (1L << 53) ? (double)over / (5 * denominator)
            : double.Parse((over / (5 * denominator)).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        if (negative) value = value == 0 ? 0 : -value;
        return true;
    }

    private static bool IsNumber(string text, out decimal value) => decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);

    private static bool IsWhole(string text, out long value) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value) && value < 1_000_000_000;

    private static string Whole(long value) => value.ToString(CultureInfo.InvariantCulture);
}
