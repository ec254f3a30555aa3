using Rodwright.Geometry;

namespace Rodwright.Stairs.Plans;

/// <summary>A flight as set out, between two turns or floors.</summary>
/// <param name="Index">0 for the lowest.</param>
/// <param name="Goings">Its straight steps; may be 0.</param>
/// <param name="FirstRiser">Number of the riser it begins with: the last one of the turn before it.</param>
/// <param name="LastRiser">Number of the riser it ends with: the first one of the turn after it.</param>
/// <param name="Along">Unit direction it climbs in.</param>
public sealed record FlightPlan(int Index, int Goings, int FirstRiser, int LastRiser, Vector2 Along)
{
    /// <summary>Mirrored in the y axis.</summary>
    public FlightPlan Mirrored() => this with { Along = new(-Along.X, Along.Y) };
}
