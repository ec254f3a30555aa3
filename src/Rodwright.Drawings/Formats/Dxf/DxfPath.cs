using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>A run of lines and arcs: written as LINE, CIRCLE or LWPOLYLINE, whichever says it most plainly.</summary>
public sealed record DxfPath : DxfEntity
{
    /// <summary>A path, mm, in the drawing's own frame.</summary>
    /// <param name="layer">Its layer.</param>
    /// <param name="path">The path.</param>
    /// <param name="pen">A pen other than the layer's; null takes the layer's.</param>
    public DxfPath(DxfLayer layer, Path2 path, Pen? pen = null) : base(layer)
    {
        Path = path;
        Pen = pen;
    }

    /// <summary>The path.</summary>
    public Path2 Path { get; }

    /// <summary>A pen other than the layer's, or null.</summary>
    public Pen? Pen { get; }
}
