using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Headroom;

/// <summary>How far one edge of the well would have to be moved out for a headroom.</summary>
/// <param name="Edge">Index of the edge: from the corner before it, as the well's ring is listed.</param>
/// <param name="From">Where the edge begins, in the world.</param>
/// <param name="To">Where it ends.</param>
/// <param name="By">mm, square to the edge.</param>
public sealed record WellLonger(int Edge, Point2 From, Point2 To, double By)
{
    /// <summary>
    /// The edges to move so that nothing under the floor has less than a headroom; none when it is there already. Exact for a convex well: what lies too close under the floor is
    /// cut out step by step (the surface has straight level lines), and each of its corners must come inside every edge it lies beyond. A well that is not convex takes each corner by its nearest edge.
    /// </summary>
    public static ImmutableArray<WellLonger> For(HeadroomReport report, double limit)
    {
        if (report.Above.FirstOrDefault(o => o.IsTrimmer) is not { Well: { } well } trimmer) return [];
        var convex = ConvexClip.IsConvex(well);
        var by = new double[well.Length];
        foreach (var corner in report.Surfaces.Where(s => HeadroomReport.HangsOver(trimmer, s, report.Surfaces[^1].Step)).SelectMany(s => TooClose(s, well, trimmer.Height - limit)))
        {
            var nearest = convex ? -1 : Nearest(well, corner);
            for (var i = 0; i < well.Length; i++)
                if (convex || i == nearest) by[i] = Math.Max(by[i], -Side(well, i).LeftOf(corner));
        }
        return [.. Enumerable.Range(0, well.Length).Where(i => by[i] > 1e-6).Select(i => new WellLonger(i, well[i], well[(i + 1) % well.Length], by[i])).OrderByDescending(w => w.By)];
    }

    /// <summary>Corners of what lies outside the well and higher than may be.</summary>
    private static IEnumerable<Point2> TooClose(WalkedSurface surface, ImmutableArray<Point2> well, double highest)
    {
        if (Math.Max(surface.Low, surface.High) <= highest + 1e-9) return [];
        var part = surface.Low >= highest ? surface.Ring : (IReadOnlyList<Point2>)ConvexClip.LeftOf(surface.Ring, surface.Level(highest));
        return part.Count < 3 ? [] : Ring.Edges(part, well, false).SelectMany(e => new[] { e.A, e.B });
    }

    private static Line2 Side(ImmutableArray<Point2> well, int i) => Line2.Between(well[i], well[(i + 1) % well.Length]);

    private static int Nearest(ImmutableArray<Point2> well, Point2 p)
    {
        var (best, off, beyond) = (0, double.PositiveInfinity, 0.0);
        for (var i = 0; i < well.Length; i++)
        {
            var (a, b) = (well[i], well[(i + 1) % well.Length]);
            var along = Math.Clamp((p - a).Dot((b - a).Unit), 0, a.DistanceTo(b));
            var (distance, outward) = (p.DistanceTo(a + along * (b - a).Unit), -Side(well, i).LeftOf(p));
            // Off a corner two edges are equally near: the one it lies further beyond, whichever comes first.
            if (distance > off + 1e-6 || distance > off - 1e-6 && outward <= beyond) continue;
            (best, off, beyond) = (i, distance, outward);
        }
        return best;
    }
}
