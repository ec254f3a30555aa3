namespace Rodwright.Geometry.Solids.Sight;

/// <summary>A stretch of an edge on the picture, all of it seen or all of it hidden.</summary>
/// <param name="Solid">Index of the solid it belongs to.</param>
/// <param name="From">Where it begins, mm of timber on the picture.</param>
/// <param name="To">Where it ends.</param>
/// <param name="IsSeen">Whether nothing stands before it.</param>
/// <param name="IsContour">Whether the solid turns out of sight there: one of the faces that meet in it looks away from the eye.</param>
public readonly record struct SightEdge(int Solid, Point2 From, Point2 To, bool IsSeen, bool IsContour)
{
    /// <summary>Its length on the picture, mm of timber.</summary>
    public double Length => From.DistanceTo(To);
}
