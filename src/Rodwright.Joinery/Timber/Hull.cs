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
        List<Point2> ring = [.. Half(sorted), .. Half(Enumerable.Reverse(sorted))];
        // Only now is anything taken for the same: on the way round it would hide a corner behind one that is a hair to its left.
        for (var i = 0; i < ring.Count && ring.Count > 3;)
        {
            var (before, after) = (ring[(i + ring.Count - 1) % ring.Count], ring[(i + 1) % ring.Count]);
            if (ring[i].DistanceTo(after) <= Tolerance.Same || Math.Abs((after - before).Unit.Cross(ring[i] - before)) <= Tolerance.Same) ring.RemoveAt(i);
            else i++;
        }
        return [.. ring];
    }

    /// <summary>One side of it, its last point left to the other.</summary>
    private static IEnumerable<Point2> Half(IEnumerable<Point2> points)
    {
        var kept = new List<Point2>();
        foreach (var p in points)
        {
            while (kept.Count > 1 && (kept[^1] - kept[^2]).Cross(p - kept[^1]) <= 0) kept.RemoveAt(kept.Count - 1);
            kept.Add(p);
        }
        return kept.SkipLast(1);
    }
}
