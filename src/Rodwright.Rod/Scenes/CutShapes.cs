using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using Rodwright.Joinery;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Things;

namespace Rodwright.Rod.Scenes;

/// <summary>The volume of one cut, for a viewer to lay over the stair.</summary>
public static class CutShapes
{
    /// <summary>
    /// A cut where it stands in the stair, as JSON: <c>{"id", "part", "points": [x, y, z, ...], "triangles": [i, j, k, ...], "lines": [i, j, ...]}</c>, millimetres in the
    /// world of the stair, z up; triangles anticlockwise as seen from outside, lines along the arrises. For the cheek of a tenon it is the tenon.
    /// Null when there is no such cut (an id that names a whole part, too), or none of it in the wood.
    /// </summary>
    /// <param name="stair">The stair.</param>
    /// <param name="id">As <see cref="ThingId.Of(Joinery.Parts.Part, Joinery.Parts.Cut)"/> gives it: part, slash, cut.</param>
    public static string? Of(Stair stair, string id)
    {
        var partId = ThingId.PartOf(id);
        var part = stair.Kit.Parts.FirstOrDefault(p => p.Id == partId);
        var cut = part?.Cuts.FirstOrDefault(c => ThingId.Of(part, c) == id);
        if (part is null || cut is null) return null;
        var shape = CutSolid.Of(part, cut, StairScene.Chord);
        if (shape.Faces.IsEmpty) return null;
        var solid = shape.Placed(part.Faces[cut.Face].Frame);
        return new JsonObject
        {
            ["id"] = id,
            ["part"] = part.Id,
            ["points"] = SceneText.Of(solid.Vertices.SelectMany(v => new[] { v.X, v.Y, v.Z })),
            ["triangles"] = Numbers(solid.Triangles()),
            ["lines"] = Numbers(SolidLines.Of(solid).Arrises.SelectMany(e => new[] { e.From, e.To })),
        }.ToJsonString();
    }

    private static JsonArray Numbers(IEnumerable<int> numbers) => new([.. numbers.Select(n => (JsonNode)JsonValue.Create(n))]);
}
