using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Gltf;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Solids;

namespace Rodwright.Rod.Packs;

/// <summary>The stair as a solid model, GLB: one named node for each part, where it stands.</summary>
public static class StairModel
{
    // Plain, dull colours that tell kinds of material apart; linear.
    private static readonly (double Red, double Green, double Blue) Boards = (0.60, 0.42, 0.24), Posts = (0.52, 0.34, 0.18), Sheet = (0.66, 0.55, 0.38);

    /// <summary>The file stair.glb.</summary>
    public static WrittenFile Write(Stair stair) => new("stair.glb", "model/gltf-binary",
        GlbWriter.Write(stair.Job.Title, [.. KitSolids.Of(stair.Kit).Select(s => new GlbPiece(s.Part.Id, s.Part.Mark, s.Part.Name, s.Shape, s.Frame, MaterialOf(s.Part)))]));

    private static GlbMaterial MaterialOf(Part part)
    {
        var (red, green, blue) = part.Kind switch
        {
            PartKind.Newel => Posts,
            PartKind.Riser or PartKind.TaperedRiser => Sheet,
            _ => Boards,
        };
        return new(part.Kind == PartKind.Newel ? part.Material + ", posts" : part.Material, red, green, blue);
    }
}
