using System.Globalization;
using System.Text.Json;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>What a number must be: its range, unit and whether it counts whole things; reads it and says what is wrong.</summary>
internal sealed record NumberRule(double Least, double Most, string Unit, bool Whole = false)
{
    /// <summary>Numbers from here on are called absurd rather than too large.</summary>
    private const double Absurd = 1e6;

    /// <summary>The code for too much, where a field has its own.</summary>
    public string AboveCode { get; init; } = JobCodes.Above;

    /// <summary>One code for everything outside the range, where a field has its own.</summary>
    public string? RangeCode { get; init; }

    /// <summary>The range in words.</summary>
    public string Range => $"{Number.Print(Least, 2)} to {With(Most)}";

    /// <summary>The number, or null when it was refused.</summary>
    public double? Read(JobReading reading, JsonElement json, string path, string hint)
    {
        if (json.ValueKind == JsonValueKind.String)
        {
            var text = json.GetString()!;
            var isNumber = double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var inside) && double.IsFinite(inside);
            if (isNumber || IsNoNumber(text))
            {
                reading.Refuse(JobCodes.NumberInQuotes, path, $"the text \"{JsonWords.Shown(text)}\" was read; a number, {Range}, is wanted",
                    isNumber ? $"write {Number.Exact(inside)} without quotation marks" : hint);
                return null;
            }
        }
        if (!reading.IsKind(json, JsonValueKind.Number, path, JobCodes.NumberWanted, $"a number, {Range},", hint)) return null;
        // A number too large for a double reads as infinite.
        if (!json.TryGetDouble(out var value) || !double.IsFinite(value))
        {
            reading.Refuse(JobCodes.NotFinite, path, $"{JsonWords.Shown(json.GetRawText())} is too large to be a number here; {Range} is allowed", hint);
            return null;
        }
        if (Judge(value) is { } code)
        {
            reading.Refuse(code, path, $"{Number.Exact(value)} was read; {Range}{(Whole ? ", whole," : "")} is allowed", hint);
            return null;
        }
        return value == 0 ? 0 : value; // also turns -0 into 0
    }

    /// <summary>A value with the unit, if there is one.</summary>
    public string With(double value) => Unit.Length == 0 ? Number.Print(value, 3) : Number.Print(value, 3) + " " + Unit;

    private string? Judge(double value)
    {
        if (value >= Least && value <= Most) return Whole && value != Math.Floor(value) ? JobCodes.NotWhole : null;
        if (RangeCode is { } own) return own;
        if (Math.Abs(value) >= Absurd) return JobCodes.Absurd;
        if (value < 0 && Least >= 0) return JobCodes.Negative;
        if (value == 0) return JobCodes.Zero;
        return value < Least ? JobCodes.Below : AboveCode;
    }

    private static bool IsNoNumber(string text) =>
        text.Trim().TrimStart('-', '+').ToLowerInvariant() is "nan" or "inf" or "infinity" or "∞";
}
