using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Models;

/// <summary>A straight stretch of the way a piece takes when the model is taken apart.</summary>
/// <param name="By">The whole stretch, mm, in the world of the model.</param>
/// <param name="From">When it begins: 0 is the model whole, 1 all apart.</param>
/// <param name="To">When it is done, after <paramref name="From"/>; evenly from one to the other.</param>
public sealed record ModelStretch(Vector3 By, double From, double To)
{
    /// <summary>How far the piece has come along this stretch, mm.</summary>
    /// <param name="apart">0 to 1.</param>
    public Vector3 At(double apart) => Math.Clamp((apart - From) / (To - From), 0, 1) * By;
}
