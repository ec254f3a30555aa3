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

    /// <summary>Whether it is a length, and so read and told in the unit of the job.</summary>
    public bool IsLength => Unit == "mm";

    /// <summary>The range in words.</summary>
    public string Range(Units units) => $"{(IsLength ? units.Print(Least, 2) : Number.Print(Least, 2))} to {With(Most, units)}";

    /// <summary>The number, or null when it was refused.</summary>
    public double? Read(JobReading reading, JsonElement json, string path, string hint)
    {
        var range = Range(reading.Units);
        if (json.ValueKind == JsonValueKind.String)
        {
            var text = json.GetString()!;
            if (IsLength && reading.Units.IsInches) return ReadInches(reading, text, path, hint);
            var isNumber = double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var inside) && double.IsFinite(inside);
            if (IsLength && Units.Inches.TryRead(text, out var inches) && !isNumber)
            {
                reading.Refuse(JobCodes.InchText, path, $"the text \"{JsonWords.Shown(text)}\" was read; a number of millimetres, {range}, is wanted",
                    $"write {Number.Print(inches, 2)} without quotation marks, or \"units\": \"inches\" for the whole job");
                return null;
            }
            if (isNumber || IsNoNumber(text))
            {
                reading.Refuse(JobCodes.NumberInQuotes, path, $"the text \"{JsonWords.Shown(text)}\" was read; a number, {range}, is wanted",
                    isNumber ? $"write {Number.Exact(inside)} without quotation marks" : hint);
                return null;
            }
        }
        if (!reading.IsKind(json, JsonValueKind.Number, path, JobCodes.NumberWanted, IsLength && reading.Units.IsInches ? $"a length, {range}," : $"a number, {range},", hint)) return null;
        // A number too large for a double reads as infinite.
        if (!json.TryGetDouble(out var value) || !double.IsFinite(value))
        {
            reading.Refuse(JobCodes.NotFinite, path, $"{JsonWords.Shown(json.GetRawText())} is too large to be a number here; {range} is allowed", hint);
            return null;
        }
        if (IsLength && reading.Numbers.IsInches) return Allowed(reading, Inches(json.GetRawText(), value), JsonWords.Shown(json.GetRawText()), path, hint);
        return Allowed(reading, value, IsLength && reading.Units.IsInches ? reading.Units.Print(value, 2) : Number.Exact(value), path, hint);
    }

    private double? Allowed(JobReading reading, double value, string read, string path, string hint)
    {
        if (Judge(value) is { } code)
        {
            reading.Refuse(code, path, $"{read} was read; {Range(reading.Units)}{(Whole ? ", whole," : "")} is allowed", hint);
            return null;
        }
        return value == 0 ? 0 : value; // also turns -0 into 0
    }

    /// <summary>A length in the trade's own writing.</summary>
    private double? ReadInches(JobReading reading, string text, string path, string hint)
    {
        if (reading.Units.TryRead(text, out var value)) return Allowed(reading, value, $"\"{JsonWords.Shown(text)}\"", path, hint);
        reading.Refuse(JobCodes.InchText, path, $"the text \"{JsonWords.Shown(text)}\" was read, which is no length in feet and inches; {Range(reading.Units)} is allowed",
            "write it like 9' 1 3/4, 10-1/4 or 10.25");
        return null;
    }

    /// <summary>A JSON number of inches, its digits taken as they stand.</summary>
    private static double Inches(string digits, double value) => Units.Inches.TryRead(digits, out var exact) ? exact : value * Units.Inch;

    /// <summary>A value with the unit, if there is one.</summary>
    public string With(double value, Units units) => IsLength && units.IsInches ? units.Print(value, 2) : Unit.Length == 0 ? Number.Print(value, 3) : Number.Print(value, 3) + " " + Unit;

    /// <summary>The type and range of the schema; a length says its unit beside them, by which <see cref="JobSchema"/> finds it.</summary>
    public void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", Whole ? "integer" : "number");
        json.WriteNumber("minimum", Least);
        json.WriteNumber("maximum", Most);
        if (IsLength) json.WriteString(JobSchema.UnitKeyword, Unit);
    }

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
