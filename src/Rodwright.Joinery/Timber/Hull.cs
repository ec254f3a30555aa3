using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Joinery.Timber;

/// <summary>The smallest convex outline round some points: what straight cuts through a board can leave.</summary>
internal static class Hull
{
    /// <summary>Anticlockwise, from the leftmost point; points on its sides are left out.</summary>
    public static ImmutableArray<Point2> Of(IEnumerable<Point2> points)
    {
        var sorted = points.OrderBy(p => p.X).ThenBy(p => p.Y).ToList();
        return [.. Half(sorted), .. Half(Enumerable.Reverse(sorted))];
    }

    /// <summary>One side of it, its last point left to the other.</summary>
    private static IEnumerable<Point2> Half(IEnumerable<Point2> points)
    {
        var kept = new List<Point2>();
        foreach (var p in points)
        {
            while (kept.Count > 1 && (kept[^1] - kept[^2]).Unit.Cross(p - kept[^1]) <= Tolerance.Same) kept.RemoveAt(kept.Count - 1);
            if (kept.Count == 0 || p.DistanceTo(kept[^1]) > Tolerance.Same) kept.Add(p);
        }
        return kept.SkipLast(1);
    }
}
