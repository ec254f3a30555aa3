using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Workshop.Edits;

namespace Rodwright.Workshop.Pictures;

/// <summary>Readings of one thing as somebody typed them, which the survey could not take.</summary>
/// <param name="Path">The field: survey.walls[0].length.</param>
/// <param name="Values">The readings, mm; empty where what was typed is no number.</param>
public sealed record RefusedReading(string Path, ImmutableArray<double> Values)
{
    /// <summary>For the picture: "✗ 3742, 3790: 48 apart".</summary>
    public string Words(Units units) => Values.IsEmpty ? "✗ no reading"
        : $"✗ {string.Join(", ", Values.Select(v => units.Print(v)))}" + (Values.Length > 1 ? $": {units.Print(Values.Max() - Values.Min())} apart" : "");

    /// <summary>What of a change was refused, each where its finding says.</summary>
    public static IEnumerable<RefusedReading> Of(JobEdit edit, IEnumerable<Finding> findings) =>
        findings.Where(f => f.Severity == Severity.Error && f.Where.StartsWith("survey.", StringComparison.Ordinal)).Select(f => f.Where).Distinct().Select(path => new RefusedReading(path, [.. Typed(edit, path)]));

    private static IEnumerable<double> Typed(JobEdit edit, string path)
    {
        // A thing that is added comes whole: the reading lies within it.
        if (edit.Changes.FirstOrDefault(c => path.StartsWith(c.Path, StringComparison.Ordinal)) is not { Json: { } json } change) return [];
        var node = JobEdits.At(new JsonObject { ["it"] = JsonNode.Parse(json) }, "it" + path[change.Path.Length..]);
        var values = node is JsonArray list ? list : new JsonArray(node?.DeepClone());
        return values.Select(v => v is JsonValue one && one.TryGetValue<double>(out var number) ? number : double.NaN).Where(double.IsFinite);
    }
}
