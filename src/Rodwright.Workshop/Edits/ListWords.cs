using System.Text.Json.Nodes;
using Rodwright.Geometry;

namespace Rodwright.Workshop.Edits;

/// <summary>Lists of a job file, of walls for instance, in words.</summary>
internal static class ListWords
{
    /// <summary>What a list holds, by its path.</summary>
    public static string NameOf(string path) => path switch
    {
        "survey.walls" => "walls of the room",
        "survey.ceilings" => "sloping ceilings",
        "survey.wayIn" => "way in",
        "survey.well.corners" => "corners of the well",
        _ => path[(path.LastIndexOf('.') + 1)..],
    };

    /// <summary>How many there are; where another has as many, what is in it.</summary>
    public static string Of(JsonNode? list, JsonNode? other) =>
        list is not JsonArray items ? "none" : other is JsonArray others && others.Count == items.Count ? items.ToJsonString() : Number.Print(items.Count, 0);
}
