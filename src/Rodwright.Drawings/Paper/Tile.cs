using Rodwright.Geometry;

namespace Rodwright.Drawings.Paper;

/// <summary>One page of a large sheet.</summary>
/// <param name="Number">From 1, along the rows, top row first.</param>
/// <param name="Column">From 0 at the left.</param>
/// <param name="Row">From 0 at the top.</param>
/// <param name="Window">The part of the large sheet it shows, mm of that sheet.</param>
/// <param name="Shift">From a point of the large sheet to the same point on this page, mm.</param>
public sealed record Tile(int Number, int Column, int Row, Box2 Window, Vector2 Shift);
