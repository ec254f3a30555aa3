using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Headroom;

/// <summary>The underside of one thing over the stair: a plane, over part of the plan.</summary>
/// <param name="Name">As findings call it: "the trimmer", or the ceiling's name.</param>
/// <param name="Ceiling">Index of the ceiling in the survey; -1 for the trimmer round the well.</param>
/// <param name="At">A point of the plane in plan.</param>
/// <param name="Height">Its height there, mm above the lower finished floor.</param>
/// <param name="Gradient">Rise per mm in plan.</param>
/// <param name="Well">Ring of the well, in the world, anticlockwise; null when it was not measured.</param>
/// <param name="Inside">Whether it hangs over the well, or round it; without a well, over everything.</param>
/// <param name="OverUpperFloor">Whether it hangs over the upper floor too.</param>
public sealed record Overhead(
    string Name, int Ceiling, Point2 At, double Height, Vector2 Gradient, ImmutableArray<Point2>? Well, bool Inside, bool OverUpperFloor)
{
    /// <summary>Whether it is the floor round the well.</summary>
    public bool IsTrimmer => Ceiling < 0;

    /// <summary>Whether it slopes.</summary>
    public bool Slopes => Gradient.Length > 1e-9;

    /// <summary>Height of its underside at a place, mm.</summary>
    public double HeightAt(Point2 p) => Height + Gradient.Dot(p - At);
}
