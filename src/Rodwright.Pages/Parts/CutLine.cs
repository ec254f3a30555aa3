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
        var face = part.Kind.IsPost() ? $", face {part.Faces[cut.Face].Looks}" : "";
        var other = kit.Joints.FirstOrDefault(j => j.Id == cut.Joint) is { } joint ? kit.Find(joint.Male == part.Id ? joint.Female : joint.Male).Name : "";
        var what = other.Length > 0 ? $", for {other}" : "";
        var units = kit.Plan.Units;
        var deep = cut.Beneath > 0 ? $"from {units.Print(cut.Beneath)} to {units.Print(cut.Depth)} behind the face" : $"{units.Print(cut.Depth)} {(cut.Kind == CutKind.RoundedEdge ? "radius" : "deep")}";
        return $"{CutWords.One(cut.Kind)}{face}, {deep}{what}";
    }
}
