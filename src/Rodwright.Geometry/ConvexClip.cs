namespace Rodwright.Geometry;

/// <summary>Cuts polygons with straight lines and convex windows, edge by edge (Sutherland and Hodgman's rule). Cheap; use <see cref="Region"/> for the rest.</summary>
public static class ConvexClip
{
    /// <summary>The part of a ring to the left of a line. A ring cut in two comes back as one, its parts joined along the line: areas are right.</summary>
    public static List<Point2> LeftOf(IReadOnlyList<Point2> ring, Line2 line)
    {
        var kept = new List<Point2>(ring.Count + 4);
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++)
        {
            var (a, b) = (line.LeftOf(ring[i]), line.LeftOf(ring[j]));
            if (a >= 0 != b >= 0) kept.Add(ring[i].Towards(ring[j], a / (a - b)));
            if (b >= 0) kept.Add(ring[j]);
        }
        return kept;
    }

    /// <summary>The part of a ring inside an anticlockwise convex window.</summary>
    public static List<Point2> Inside(IReadOnlyList<Point2> ring, IReadOnlyList<Point2> window)
    {
        List<Point2> kept = [.. ring];
        for (int i = window.Count - 1, j = 0; j < window.Count && kept.Count > 0; i = j++)
            if (!window[i].IsSame(window[j])) kept = LeftOf(kept, Line2.Between(window[i], window[j]));
        return kept;
    }

    /// <summary>Area of a ring, positive whichever way it runs.</summary>
    public static double Area(IReadOnlyList<Point2> ring)
    {
        var twice = 0.0;
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++) twice += ring[i].X * ring[j].Y - ring[j].X * ring[i].Y;
        return Math.Abs(twice) / 2;
    }

    /// <summary>Whether an anticlockwise ring is convex, within <see cref="Tolerance.Same"/>.</summary>
    public static bool IsConvex(IReadOnlyList<Point2> ring)
    {
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b, c) = (ring[i], ring[(i + 1) % ring.Count], ring[(i + 2) % ring.Count]);
            if ((b - a).Cross(c - b) < -Tolerance.Same * (b - a).Length) return false;
        }
        return true;
    }
}
