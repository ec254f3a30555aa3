using System.Collections.Immutable;

namespace Rodwright.Geometry.Solids;

/// <summary>A closed outline carried square in behind the plane of a frame: what lies between w = 0 and w = -<paramref name="Depth"/>.</summary>
/// <param name="Frame">Where it lies; w points out.</param>
/// <param name="Outline">Closed, not crossing itself, in the frame's plane; either way round.</param>
/// <param name="Depth">mm, above zero.</param>
public sealed record Extrusion(Frame3 Frame, Path2 Outline, double Depth)
{
    /// <summary>Closed outlines inside the outline that are left out, right through.</summary>
    public ImmutableArray<Path2> Holes { get; init; } = [];
}
