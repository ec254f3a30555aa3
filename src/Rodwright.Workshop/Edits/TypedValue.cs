using System.Globalization;
using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Edits;

/// <summary>Turns what somebody typed into a field into the value the job file holds.</summary>
internal static class TypedValue
{
    /// <summary>The JSON of a text for a field, lengths in millimetres whatever the unit they were typed in. What fits no kind of the field is passed on as text, so that the reader refuses it in its own words.</summary>
    public static string Json(FieldDescription? field, string text, Units units)
    {
        if (field is { Choices: ["true", "false"] } && text is "true" or "false") return text;
        if (field is { Least: not null, Choices.IsEmpty: true })
        {
            var read = field.IsLength && units.IsInches ? (Func<string, double?>)(t => units.TryRead(t, out var length) ? length : null) : Number;
            if (read(text) is { } number) return Written(number);
            var parts = text.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            if (parts.Length > 1 && parts.Select(read).ToList() is var numbers && numbers.All(n => n is not null)) return $"[{string.Join(",", numbers.Select(n => Written(n!.Value)))}]";
        }
        return JsonValue.Create(text).ToJsonString();
    }

    /// <summary>A decimal number with a point, with or without "mm" after it; null for anything else. A comma is never a decimal point here: it parts readings.</summary>
    public static double? Number(string text)
    {
        var bare = text.EndsWith("mm", StringComparison.Ordinal) ? text[..^2].TrimEnd() : text;
        return double.TryParse(bare, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;
    }

    private static string Written(double value) => JsonValue.Create(value).ToJsonString();
}
