using System.Collections.Immutable;

namespace Rodwright.Geometry.Solids;

/// <summary>A flat face of a solid. Loops are indices of the solid's vertices.</summary>
/// <param name="Normal">Unit vector out of the wood.</param>
/// <param name="Outer">Its outline, anticlockwise as seen from outside.</param>
/// <param name="Holes">Outlines of its holes, clockwise as seen from outside.</param>
public sealed record SolidFace(Vector3 Normal, ImmutableArray<int> Outer, ImmutableArray<ImmutableArray<int>> Holes)
{
    /// <summary>The outline and the holes.</summary>
    public IEnumerable<ImmutableArray<int>> Loops => Holes.Prepend(Outer);
}
