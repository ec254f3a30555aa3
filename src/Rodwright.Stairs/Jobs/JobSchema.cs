using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Stairs.Jobs;

/// <summary>
/// The JSON Schema (draft 2020-12) of a job file, made from the same descriptions the reader works from: one for jobs in millimetres and one for jobs in inches, chosen by the
/// field units. Contradictions between fields are the reader's alone.
/// </summary>
public static class JobSchema
{
    /// <summary>Beside type and range of a length: its unit. No keyword of the draft, and so without force.</summary>
    internal const string UnitKeyword = "unit";

    private static readonly Lazy<string> Written = new(Write);

    /// <summary>The schema, indented, ending in a line feed.</summary>
    public static string Text() => Written.Value;

    private static string Write()
    {
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Rodwright job",
            ["description"] = "A timber stair to be set out: lengths in millimetres, or in inches where units says so.",
            ["if"] = new JsonObject { ["properties"] = new JsonObject { ["units"] = new JsonObject { ["const"] = Units.Inches.Id } }, ["required"] = new JsonArray("units") },
            ["then"] = new JsonObject { ["$ref"] = "#/$defs/inches" },
            ["else"] = new JsonObject { ["$ref"] = "#/$defs/millimetres" },
            ["$defs"] = new JsonObject { ["millimetres"] = Of(Units.Millimetres), ["inches"] = InInches(Of(Units.Inches)) },
        };
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JobFile.Layout)) schema.WriteTo(json);
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static JsonNode Of(Units units)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            Group.WriteSchema(json, JobFields.BlankIn(units), JobFields.All);
            json.WriteEndObject();
        }
        return JsonNode.Parse(stream.ToArray())!;
    }

    /// <summary>Lengths as numbers of inches, or as text of feet and inches, whose range the reader judges.</summary>
    private static JsonNode InInches(JsonNode node)
    {
        switch (node)
        {
            case JsonArray list:
                foreach (var item in list) if (item is not null) InInches(item);
                break;
            case JsonObject rule when rule.ContainsKey(UnitKeyword):
                var (least, most) = (rule["minimum"]!.GetValue<double>() / Units.Inch, rule["maximum"]!.GetValue<double>() / Units.Inch);
                foreach (var name in (ReadOnlySpan<string>)["type", "minimum", "maximum"]) rule.Remove(name);
                rule["anyOf"] = new JsonArray(
                    new JsonObject { ["type"] = "number", ["minimum"] = Math.Floor(least * 1000) / 1000, ["maximum"] = Math.Ceiling(most * 1000) / 1000 },
                    new JsonObject { ["type"] = "string", ["pattern"] = "[0-9¼½¾⅛⅜⅝⅞⅓⅔]" });
                if (rule["default"] is { } usual) rule["default"] = Units.Inches.Typed(usual.GetValue<double>());
                rule[UnitKeyword] = Units.Inches.Id;
                break;
            case JsonObject group:
                foreach (var (_, value) in group.ToList()) if (value is not null) InInches(value);
                break;
        }
        return node;
    }
}
