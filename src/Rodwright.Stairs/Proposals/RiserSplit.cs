using System.Collections.Immutable;

namespace Rodwright.Stairs.Proposals;

/// <summary>
/// A height shared out equally among risers. The books round the number of risers in three ways (standards.md 12.10), each a factory here; all of them
/// share the height out exactly afterwards.
/// </summary>
/// <param name="Risers">At least 1.</param>
/// <param name="Rise">Height over risers, in the unit of the height.</param>
public sealed record RiserSplit(int Risers, double Rise)
{
    /// <summary>A height that is a whole number of rises to within rounding needs no riser more.</summary>
    private const double Rounding = 1e-9;

    /// <summary>The fewest risers whose rise is not above <paramref name="most"/>: the way of regulations.</summary>
    public static RiserSplit NotAbove(double height, double most) => Of(height, Math.Ceiling(height / most - Rounding));

    /// <summary>The number of risers nearest to the height over the wished-for rise.</summary>
    public static RiserSplit Nearest(double height, double rise) => Of(height, Math.Round(height / rise, MidpointRounding.AwayFromZero));

    /// <summary>The height over the wished-for rise, any fraction disregarded: the rise comes out at that or a little above.</summary>
    public static RiserSplit Disregarding(double height, double rise) => Of(height, Math.Floor(height / rise + Rounding));

    /// <summary>Every number of risers whose rise lies in a range, fewest first: all that can be chosen from.</summary>
    public static ImmutableArray<RiserSplit> Between(double height, double least, double most)
    {
        var splits = ImmutableArray.CreateBuilder<RiserSplit>();
        for (var split = NotAbove(height, most); split.Rise >= least - Rounding; split = Of(height, split.Risers + 1)) splits.Add(split);
        return splits.ToImmutable();
    }

    private static RiserSplit Of(double height, double risers)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(height);
        var count = Math.Max(1, (int)risers);
        return new(count, height / count);
    }
}
