using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Workshop.Picks;

namespace Rodwright.Pages.Parts;

/// <summary>A cut in one line of the parts list.</summary>
internal static class CutLine
{
    /// <summary>"mortice, face S, 62 deep".</summary>
    public static string Of(Part part, Cut cut)
    {
        var face = part.Kind == PartKind.Newel ? $", face {part.Faces[cut.Face].Looks}" : "";
        var what = cut.Joint.Length > 0 ? $", {cut.Joint}" : "";
        return $"{CutWords.One(cut.Kind)}{face}, {Number.Print(cut.Depth)} {(cut.Kind == CutKind.RoundedEdge ? "radius" : "deep")}{what}";
    }
}
