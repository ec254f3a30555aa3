using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Pages.Parts;

/// <summary>What a cut is called in the parts list.</summary>
internal static class CutWords
{
    /// <summary>"mortice, face S, 62 deep".</summary>
    public static string Of(Part part, Cut cut)
    {
        var kind = cut.Kind switch
        {
            CutKind.Housing => "housing",
            CutKind.CornerHousing => "corner housing",
            CutKind.Mortice => "mortice",
            CutKind.Haunch => "haunch",
            CutKind.TenonCheek => "tenon cheek",
            CutKind.Bore => "peg hole",
            CutKind.Notch => "notch",
            CutKind.RoundedEdge => "rounded edge",
            _ => "cut",
        };
        var face = part.Kind == PartKind.Newel ? $", face {part.Faces[cut.Face].Looks}" : "";
        var what = cut.Joint.Length > 0 ? $", {cut.Joint}" : "";
        return $"{kind}{face}, {Number.Print(cut.Depth)} {(cut.Kind == CutKind.RoundedEdge ? "radius" : "deep")}{what}";
    }
}
