using System.Collections.Immutable;

namespace Rodwright.Geometry.Offsets;

/// <summary>What a round cutter leaves standing in one place.</summary>
/// <param name="Shape">Its outline, anticlockwise.</param>
/// <param name="Corners">The corners in it that the cutter does not reach: one, none at an arc tighter than the cutter, several where it does not go in.</param>
/// <param name="Tightest">Radius of the tightest arc of the edge in it that turns inwards, mm; null when there is none.</param>
/// <param name="Away">How far from its edge the cutter stays at most, mm; infinite where it does not go in anywhere.</param>
public sealed record LeftPiece(Path2 Shape, ImmutableArray<LeftCorner> Corners, double? Tightest, double Away)
{
    /// <summary>mm².</summary>
    public double Area => Math.Abs(Shape.Area);
}

/// <summary>An inside corner.</summary>
/// <param name="At">Where it is.</param>
/// <param name="Opening">The angle between its two sides.</param>
/// <param name="Away">How far the cutter stays out of it, mm.</param>
public sealed record LeftCorner(Point2 At, Angle Opening, double Away);
