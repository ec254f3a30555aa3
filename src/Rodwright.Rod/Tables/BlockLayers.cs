using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Rod.Tables;

/// <summary>The layers a block is built up from: as few as the thickest one asked for allows, all of one thickness.</summary>
/// <param name="Count">How many.</param>
/// <param name="Thickness">Of each, mm.</param>
public sealed record BlockLayers(int Count, double Thickness)
{
    /// <summary>The layers of a block.</summary>
    public static BlockLayers Of(BottomStep step, Part block)
    {
        var height = block.FaceSide.Thickness;
        var count = (int)Math.Ceiling(height / step.Layer - 1e-9);
        return new(count, height / count);
    }
}
