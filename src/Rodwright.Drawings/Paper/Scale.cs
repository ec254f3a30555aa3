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

    /// <summary>The largest usual scale at which a drawing of the given size fits the room; 1:50 when none does.</summary>
    public static Scale ToFit(double width, double height, double roomWidth, double roomHeight) =>
        Usual.FirstOrDefault(s => width * s.Factor <= roomWidth && height * s.Factor <= roomHeight) ?? Usual[^1];

    /// <summary>Reads "1:5", "1:2.5" or the bare ratio "5".</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="scale">The scale; full size when reading failed.</param>
    /// <param name="reason">Why reading failed; empty when it did not.</param>
    public static bool TryParse(string? text, out Scale scale, out string reason)
    {
        scale = Full;
        var trimmed = (text ?? "").Trim();
        var colon = trimmed.IndexOf(':', StringComparison.Ordinal);
        if (colon >= 0 && trimmed[..colon].Trim() != "1")
        {
            reason = $"“{trimmed}” is not a scale: write 1:5, with 1 before the colon";
            return false;
        }
        var number = trimmed[(colon + 1)..].Trim();
        if (!double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var ratio))
        {
            reason = $"“{trimmed}” is not a scale: write 1:5, 1:2.5 or 5";
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

    /// <summary>"1:5".</summary>
    public override string ToString() => "1:" + Number.Print(Ratio, 3);
}
