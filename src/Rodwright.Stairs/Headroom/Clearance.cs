using Rodwright.Geometry;

namespace Rodwright.Stairs.Headroom;

/// <summary>One vertical clearance.</summary>
/// <param name="Least">mm; negative where the stair runs into what is above it.</param>
/// <param name="At">Where in plan, in the world.</param>
/// <param name="Step">Over which step: 0 the floor at the foot, the number of risers the upper floor.</param>
/// <param name="Under">What is above.</param>
public sealed record Clearance(double Least, Point2 At, int Step, Overhead Under);
