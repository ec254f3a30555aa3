using System.Collections.Frozen;
using System.Text.Json.Nodes;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>Turns the lengths of a job's file from numbers of millimetres into another unit's writing. Which numbers are lengths the descriptions of the fields say.</summary>
internal static class LengthsOfFile
{
    private static readonly FrozenSet<string> Lengths = JobFields.Descriptions.Where(d => d.Unit == "mm").Select(d => d.Path.EndsWith("[]", StringComparison.Ordinal) ? d.Path[..^2] : d.Path).ToFrozenSet();

    /// <summary>The tree of a file, in place.</summary>
    public static JsonNode In(Units units, JsonNode file) => Walk(units, file, "")!;

    private static JsonNode? Walk(Units units, JsonNode? node, string path)
    {
        switch (node)
        {
            case JsonObject group:
                foreach (var (name, value) in group.ToList())
                    if (Walk(units, value, Group.Join(path, name)) is var written && written != value) group[name] = written;
                return group;
            case JsonArray list:
                for (var i = 0; i < list.Count; i++)
                    if (Walk(units, list[i], list[i] is JsonObject ? path + "[]" : path) is var written && written != list[i]) list[i] = written;
                return list;
            case JsonValue value when Lengths.Contains(path) && value.TryGetValue<double>(out var length):
                return JsonValue.Create(units.Typed(length));
            default:
                return node;
        }
    }
}
