using Rodwright.Geometry;

namespace Rodwright.Rod.Scenes;

/// <summary>One straight stretch of the way a part takes when the stair is taken apart.</summary>
/// <param name="By">The whole stretch, mm, in the world of the stair.</param>
/// <param name="From">When it begins: 0 is the stair whole, 1 all apart.</param>
/// <param name="To">When it is done; evenly from one to the other.</param>
public sealed record Leg(Vector3 By, double From, double To)
{
    /// <summary>How far the part has come along this stretch.</summary>
    /// <param name="apart">0 to 1.</param>
    public Vector3 At(double apart) => Math.Clamp((apart - From) / (To - From), 0, 1) * By;
}
