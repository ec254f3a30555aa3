using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Workshop.Picks;

namespace Rodwright.Pages.Parts;

/// <summary>A cut in one line of the parts list.</summary>
internal static class CutLine
{
    /// <summary>"mortice, face S, 62 deep, for newel string, lower flight".</summary>
    public static string Of(Kit kit, Part part, Cut cut)
    {
        var face = part.Kind == PartKind.Newel ? $", face {part.Faces[cut.Face].Looks}" : "";
        var other = kit.Joints.FirstOrDefault(j => j.Id == cut.Joint) is { } joint ? kit.Find(joint.Male == part.Id ? joint.Female : joint.Male).Name : "";
        var what = other.Length > 0 ? $", for {other}" : "";
        return $"{CutWords.One(cut.Kind)}{face}, {kit.Plan.Units.Print(cut.Depth)} {(cut.Kind == CutKind.RoundedEdge ? "radius" : "deep")}{what}";
    }
}
