using System.Text.Json;
using System.Text.Json.Nodes;
using Rodwright.Geometry;

namespace Rodwright.Rod.Scenes;

/// <summary>Points and directions as JSON: arrays of numbers to a thousandth.</summary>
internal static class SceneText
{
    /// <summary>Numbers, millimetres or parts of a unit vector.</summary>
    public static JsonArray Of(params IEnumerable<double> numbers) => new([.. numbers.Select(n => (JsonNode)JsonValue.Create(Math.Round(n, 3) + 0.0))]);

    /// <summary>A point.</summary>
    public static JsonArray Of(Point3 p) => Of(p.X, p.Y, p.Z);

    /// <summary>A direction.</summary>
    public static JsonArray Of(Vector3 v) => Of(v.X, v.Y, v.Z);

    /// <summary>An object that nothing can change any more.</summary>
    public static JsonElement Fixed(JsonObject text)
    {
        using var read = JsonDocument.Parse(text.ToJsonString());
        return read.RootElement.Clone();
    }
}
