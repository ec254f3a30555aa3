using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Gltf;
using Rodwright.Joinery;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Scenes;

namespace Rodwright.Rod.Packs;

/// <summary>The stair as a solid model, GLB: one named node for each part, where it stands.</summary>
public static class StairModel
{
    /// <summary>The file stair.glb.</summary>
    public static WrittenFile Write(Stair stair) => new("stair.glb", "model/gltf-binary",
        GlbWriter.Write(stair.Job.Title, [.. KitSolids.Of(stair.Kit).Select(s => new GlbPiece(s.Part.Id, s.Part.Mark, s.Part.Name, s.Shape, s.Frame, PartLook.Of(s.Part)))]));
}
