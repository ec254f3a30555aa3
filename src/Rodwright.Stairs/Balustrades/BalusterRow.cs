using Rodwright.Geometry;

namespace Rodwright.Stairs.Balustrades;

/// <summary>How balusters are shared out over a clear length: equal gaps, the least number that leaves none greater than allowed.</summary>
/// <param name="Count">How many.</param>
/// <param name="Gap">Clear between two of them, and between the last one and the newel, mm.</param>
/// <param name="Side">Side of a baluster, mm.</param>
public sealed record BalusterRow(int Count, double Gap, double Side)
{
    /// <summary>The row between two faces.</summary>
    /// <param name="clear">Level length between them, mm.</param>
    /// <param name="side">Side of a baluster, mm.</param>
    /// <param name="greatest">Greatest gap allowed, mm.</param>
    public static BalusterRow Of(double clear, double side, double greatest)
    {
        // (n + 1) gaps and n balusters: n (side + gap) >= clear - gap.
        var count = Math.Max(0, (int)Math.Ceiling((clear - greatest) / (side + greatest) - Tolerance.Same));
        return new(count, (clear - count * side) / (count + 1), side);
    }

    /// <summary>From the face it begins at to the near side of baluster i, counted from 0, mm.</summary>
    public double Start(int i) => Gap + i * (Gap + Side);
}
