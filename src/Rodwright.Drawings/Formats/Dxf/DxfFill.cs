using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Dxf;

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
