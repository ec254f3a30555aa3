using Rodwright.Geometry;

namespace Rodwright.Stairs.Turns;

/// <summary>A riser face of a turn, in the turn's frame.</summary>
/// <param name="Inner">On the newel's or inner string's face.</param>
/// <param name="Walking">On the walking line.</param>
/// <param name="Outer">On the wall string's face.</param>
public readonly record struct TurnLine(Point2 Inner, Point2 Walking, Point2 Outer);
