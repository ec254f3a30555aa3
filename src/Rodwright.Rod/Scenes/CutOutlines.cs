using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Scenes;

/// <summary>
/// The cuts of a part as a viewer finds them under a finger: on which face, with what outline, how deep. The solid alone does not tell them apart: housings of one depth
/// share one floor.
/// </summary>
internal static class CutOutlines
{
    /// <summary>Coarser than what is drawn: a finger does not tell a tenth of a millimetre, mm.</summary>
    private const double Chord = 0.1;

    /// <summary>The part's faces: origin, u and v in turn, in the frame of the first.</summary>
    public static JsonArray Faces(Part part)
    {
        var home = part.FaceSide.Frame;
        return new([.. part.Faces.Select(f => (JsonNode)SceneText.Of([.. In(home, f.Frame.Origin - home.Origin), .. In(home, f.Frame.U), .. In(home, f.Frame.V)]))]);
    }

    /// <summary>Cuts in their order; rounded edges have no outline: they are the piece's own.</summary>
    public static JsonArray Of(Part part) => new([.. part.Cuts.Where(c => c.Kind != CutKind.RoundedEdge).Select(c => (JsonNode)new JsonObject
    {
        ["id"] = c.Id, ["face"] = c.Face, ["depth"] = Math.Round(c.Depth, 3), ["outline"] = SceneText.Of(c.Shape.Flattened(Chord).SelectMany(p => new[] { p.X, p.Y })),
    })]);

    private static IEnumerable<double> In(Frame3 frame, Vector3 v) => [v.Dot(frame.U), v.Dot(frame.V), v.Dot(frame.W)];
}
