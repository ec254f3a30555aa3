using System.Globalization;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Paper;

/// <summary>The scale of a drawing, always a reduction or full size: 1 mm of paper stands for <see cref="Ratio"/> mm of timber.</summary>
public sealed record Scale
{
    private Scale(double ratio) => Ratio = ratio;

    /// <summary>Full size, 1:1.</summary>
    public static Scale Full { get; } = new(1);

    /// <summary>The scales the trade's rules are divided in, largest first: 1:1, 1:2, 1:2.5, 1:5, 1:10, 1:20, 1:50.</summary>
    public static IReadOnlyList<Scale> Usual { get; } = [Full, new(2), new(2.5), new(5), new(10), new(20), new(50)];

    /// <summary>Those of a scale rule in feet and inches: full and half size, then 3, 1 1/2, 1, 3/4, 1/2, 3/8 and 1/4 inch to the foot.</summary>
    public static IReadOnlyList<Scale> UsualInches { get; } = [Full, new(2), new(4), new(8), new(12), new(16), new(24), new(32), new(48)];

    /// <summary>The usual scales of a unit.</summary>
    public static IReadOnlyList<Scale> UsualIn(Units units) => units.IsInches ? UsualInches : Usual;

    /// <summary>Millimetres of timber to one millimetre of paper, 1 to 1000.</summary>
    public double Ratio { get; }

    /// <summary>Millimetres of paper to one of timber.</summary>
    public double Factor => 1 / Ratio;

    /// <summary>Whether this is 1:1.</summary>
    public bool IsFull => Ratio == 1;

    /// <summary>The scale 1 to <paramref name="ratio"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not 1 to 1000.</exception>
    public static Scale OneTo(double ratio) =>
        ratio is >= 1 and <= 1000 ? new(ratio) : throw new ArgumentOutOfRangeException(nameof(ratio), ratio, "a scale is 1:1 to 1:1000");

    /// <summary>The largest usual scale at which a drawing of the given size fits the room; the smallest when none does.</summary>
    public static Scale ToFit(double width, double height, double roomWidth, double roomHeight, Units? units = null)
    {
        var usual = UsualIn(units ?? Units.Millimetres);
        return usual.FirstOrDefault(s => width * s.Factor <= roomWidth && height * s.Factor <= roomHeight) ?? usual[^1];
    }

    /// <summary>Reads "1:5", "1:2.5" or the bare ratio "5"; and "full", "half" or inches to the foot: 3", 1 1/2 in, 3/4" = 1'.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="scale">The scale; full size when reading failed.</param>
    /// <param name="reason">Why reading failed; empty when it did not.</param>
    public static bool TryParse(string? text, out Scale scale, out string reason)
    {
        scale = Full;
        var trimmed = (text ?? "").Trim();
        if (Inches(trimmed) is { } named)
        {
            reason = named.Ratio is >= 1 and <= 1000 ? "" : $"“{trimmed}” is out of reach: scales run from full size to 1:1000";
            if (reason.Length == 0) scale = named;
            return reason.Length == 0;
        }
        var colon = trimmed.IndexOf(':', StringComparison.Ordinal);
        if (colon >= 0 && trimmed[..colon].Trim() != "1")
        {
            reason = $"“{trimmed}” is not a scale: write 1:5, with 1 before the colon";
            return false;
        }
        var number = trimmed[(colon + 1)..].Trim();
        if (!double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var ratio))
        {
            reason = $"“{trimmed}” is not a scale: write 1:5, 1:2.5 or 5, or inches to the foot like 1 1/2 in";
            return false;
        }
        if (ratio is not (>= 1 and <= 1000))
        {
            reason = $"1:{Number.Print(ratio, 3)} is out of reach: scales run from 1:1 to 1:1000";
            return false;
        }
        scale = new(ratio);
        reason = "";
        return true;
    }

    /// <summary>Full, half, 3", 1 1/2 in, 3/4" = 1'; null for anything that is not said in inches to the foot.</summary>
    private static Scale? Inches(string text)
    {
        var said = text.ToLowerInvariant();
        if (said is "full" or "full size") return Full;
        if (said is "half" or "half size") return new(2);
        var foot = said.IndexOf('=', StringComparison.Ordinal);
        if (foot < 0) foot = said.IndexOf("to the f", StringComparison.Ordinal);
        if (foot >= 0 && said[foot..].Trim(' ', '=') is not ("1'" or "1' 0\"" or "1'-0\"" or "1'0\"" or "1 ft" or "to the foot" or "foot")) return null;
        var inches = (foot < 0 ? said : said[..foot]).Trim();
        // A bare whole number is a ratio, as 5 is 1:5; a fraction or an inch mark is inches.
        if (inches.Contains(':', StringComparison.Ordinal) || (foot < 0 && !inches.AsSpan().ContainsAny("\"”″/n"))) return null;
        return Units.Inches.TryRead(inches, out var length) && length > 0 ? new(Math.Round(12 * Units.Inch / length, 9)) : null;
    }

    /// <summary>The scale as a sheet tells it: 1:5, or full size, half size and 3" = 1' 0" where lengths are feet and inches; a ratio no scale rule has stays a ratio.</summary>
    public string Told(Units units) => !units.IsInches ? ToString()
        : IsFull ? "full size"
        : Ratio == 2 ? "half size"
        : 12 * 16 / Ratio % 1 == 0 ? $"{units.Print(12 * Units.Inch / Ratio)} = 1' 0\""
        : ToString();

    /// <summary>"1:5".</summary>
    public override string ToString() => "1:" + Number.Print(Ratio, 3);
}
