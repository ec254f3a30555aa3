using Rodwright.Geometry;

namespace Rodwright.Stairs.Surveys;

/// <summary>A stretch of the well's edge that shows: no wall stands on it, the stair does not arrive at it, and no balustrade of the landing finishes it.</summary>
/// <param name="Index">Which edge of the well, in order round it.</param>
/// <param name="Line">Along the whole edge in the world, the well on its left; station 0 at its first corner.</param>
/// <param name="From">Station at which the stretch begins, mm.</param>
/// <param name="To">Station at which it ends, mm.</param>
public sealed record WellEdge(int Index, Line2 Line, double From, double To)
{
    /// <summary>The edge before this one where the corner between them shows on both sides; null where it does not.</summary>
    public Line2? Before { get; init; }

    /// <summary>The edge after this one likewise.</summary>
    public Line2? After { get; init; }

    /// <summary>The face of the wall it begins at; null where it begins at none.</summary>
    public Line2? WallBefore { get; init; }

    /// <summary>The face of the wall it ends at; null where it ends at none.</summary>
    public Line2? WallAfter { get; init; }
}
