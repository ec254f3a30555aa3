using Rodwright.Drawings.Formats.Gltf;
using Rodwright.Drawings.Formats.Models;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Scenes;

/// <summary>What parts look to be made of: plain, dull colours that tell kinds of material apart.</summary>
internal static class PartLook
{
    // Linear.
    private static readonly (double Red, double Green, double Blue) Boards = (0.60, 0.42, 0.24), Posts = (0.52, 0.34, 0.18), Sheet = (0.66, 0.55, 0.38);

    public static ModelMaterial Of(Part part)
    {
        var (red, green, blue) = IsSheet(part) ? Sheet : part.Kind == PartKind.Newel ? Posts : Boards;
        return new(part.Kind == PartKind.Newel ? part.Material + ", posts" : part.Material, red, green, blue);
    }

    /// <summary>Risers are cut from sheet material, whose layers lie in the plane of the face.</summary>
    public static bool IsSheet(Part part) => part.Kind is PartKind.Riser or PartKind.TaperedRiser;
}
