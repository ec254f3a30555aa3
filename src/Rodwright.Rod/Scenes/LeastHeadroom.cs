using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using Rodwright.Joinery;
using Rodwright.Stairs.Headroom;

namespace Rodwright.Rod.Scenes;

/// <summary>Where the headroom is least, for a viewer to mark in the stair: the plumb line with its measure, and the piece of floor or ceiling it is under.</summary>
public static class LeastHeadroom
{
    /// <summary>How far the piece above reaches to every side of the place, mm: of the picture only.</summary>
    private const double Reach = 450;

    /// <summary>Thickness of the piece of a ceiling, mm: of the picture only.</summary>
    private const double Thick = 20;

    /// <summary>
    /// As JSON: <c>{"words", "low": [x, y, z], "high": [x, y, z], "points": [x, y, z, ...], "triangles": [i, j, k, ...], "lines": [i, j, ...]}</c>, millimetres in the world of the
    /// stair, z up. Null when nothing above the stair was measured, or nothing of it hangs over the stair.
    /// </summary>
    public static string? Of(Stair stair)
    {
        if (HeadroomReport.Of(stair.Plan)?.Least is not { } least) return null;
        var (x, y, high) = (least.At.X, least.At.Y, least.Under.HeightAt(least.At));
        var (points, triangles, lines) = (new JsonArray(), new JsonArray(), new JsonArray());
        foreach (var piece in Above(stair, least))
        {
            var first = points.Count / 3;
            foreach (var p in piece.Vertices)
                foreach (var number in SceneText.Of(least.Under.IsTrimmer ? p : new(p.X, p.Y, p.Z + least.Under.HeightAt(new(p.X, p.Y))))) points.Add(number!.DeepClone());
            foreach (var i in piece.Triangles()) triangles.Add(first + i);
            foreach (var (from, to) in SolidLines.Of(piece).Arrises)
            {
                lines.Add(first + from);
                lines.Add(first + to);
            }
        }
        return new JsonObject
        {
            ["words"] = Words(stair, least), ["low"] = SceneText.Of(x, y, high - least.Least), ["high"] = SceneText.Of(x, y, high),
            ["points"] = points, ["triangles"] = triangles, ["lines"] = lines,
        }.ToJsonString();
    }

    private static string Words(Stair stair, Clearance least) => least.Least < 0
        ? $"✗ {stair.Units.With(-least.Least, 0)} in {least.Under.Name}, {HeadroomWords.Step(stair.Plan, least.Step)}"
        : $"headroom {stair.Units.With(least.Least, 0)}, {HeadroomWords.Where(stair.Plan, least)}";

    /// <summary>What of the thing lies round the place: the floor's own depth, or a ceiling as a thin slab on its underside, still level.</summary>
    private static IEnumerable<Solid> Above(Stair stair, Clearance least)
    {
        var square = Path2.Rectangle(least.At.X - Reach, least.At.Y - Reach, least.At.X + Reach, least.At.Y + Reach);
        var (top, bottom) = least.Under.IsTrimmer ? (stair.Job.Survey.Height, least.Under.Height) : (Thick, 0);
        // A ceiling seen through the well goes on over the upper floor; what hangs round the well ends at its edge.
        return least.Under is { Inside: false, Well: { } well } ? RoomSolid.Less(square, [Path2.Polygon(well)], top, bottom) : [RoomSolid.Of(square, top, bottom)];
    }
}
