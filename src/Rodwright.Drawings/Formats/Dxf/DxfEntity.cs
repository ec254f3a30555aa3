using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>One thing in a DXF file. The set of kinds is closed.</summary>
public abstract record DxfEntity
{
    private protected DxfEntity(DxfLayer layer) => Layer = layer;

    /// <summary>Its layer.</summary>
    public DxfLayer Layer { get; }
}

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

/// <summary>A line of lettering.</summary>
public sealed record DxfText : DxfEntity
{
    /// <summary>Lettering; its layer of meaning is not used, that of the file is.</summary>
    public DxfText(DxfLayer layer, TextMark text) : base(layer) => Text = text;

    /// <summary>The lettering, mm.</summary>
    public TextMark Text { get; }
}

/// <summary>A shape filled solid.</summary>
public sealed record DxfFill : DxfEntity
{
    /// <summary>A fill by the even-odd rule.</summary>
    /// <param name="layer">Its layer.</param>
    /// <param name="outlines">Closed outlines, mm.</param>
    /// <param name="tint">0 white to 1 black; the nearest of the format's greys is written.</param>
    public DxfFill(DxfLayer layer, IEnumerable<Path2> outlines, double tint) : base(layer)
    {
        Outlines = [.. outlines];
        Tint = tint;
    }

    /// <summary>Closed outlines.</summary>
    public ImmutableArray<Path2> Outlines { get; }

    /// <summary>0 white to 1 black.</summary>
    public double Tint { get; }
}
