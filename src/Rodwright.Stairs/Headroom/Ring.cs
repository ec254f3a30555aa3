using Rodwright.Geometry;

namespace Rodwright.Stairs.Headroom;

/// <summary>Rings of corners against one another, worked out edge by edge: no overlay, so that a least value on an area is found on its true boundary.</summary>
internal static class Ring
{
    /// <summary>How far inside its area an edge is looked at, mm: what lies on two boundaries at once belongs to the side the area is on.</summary>
    private const double Inside = 1e-5;

    public static double Area(IReadOnlyList<Point2> ring)
    {
        var twice = 0.0;
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++) twice += ring[i].X * ring[j].Y - ring[j].X * ring[i].Y;
        return twice / 2;
    }

    /// <summary>The ring running anticlockwise.</summary>
    public static IReadOnlyList<Point2> Anticlockwise(IReadOnlyList<Point2> ring) => Area(ring) >= 0 ? ring : [.. ring.Reverse()];

    /// <summary>Whether a point lies in a ring, by the number of sides crossed to the right of it.</summary>
    public static bool Holds(IReadOnlyList<Point2> ring, Point2 p)
    {
        var odd = false;
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++)
        {
            var (a, b) = (ring[i], ring[j]);
            if (a.Y > p.Y != b.Y > p.Y && p.X < (b.X - a.X) * (p.Y - a.Y) / (b.Y - a.Y) + a.X) odd = !odd;
        }
        return odd;
    }

    /// <summary>
    /// The boundary of what an area has inside another (or outside it): pieces of its own edges, and pieces of the other's edges within it.
    /// </summary>
    /// <param name="area">Anticlockwise.</param>
    /// <param name="other">The other ring; null keeps the whole area.</param>
    /// <param name="inside">Whether what lies inside the other is wanted, or what lies outside.</param>
    public static IEnumerable<(Point2 A, Point2 B)> Edges(IReadOnlyList<Point2> area, IReadOnlyList<Point2>? other, bool inside)
    {
        for (int i = area.Count - 1, j = 0; j < area.Count; i = j++)
        {
            if (area[i].IsSame(area[j])) continue;
            if (other is null)
            {
                yield return (area[i], area[j]);
                continue;
            }
            var inward = Inside * (area[j] - area[i]).Unit.Left;
            foreach (var piece in Split(area[i], area[j], other))
                if (Holds(other, piece.A.Towards(piece.B, 0.5) + inward) == inside) yield return piece;
        }
        if (other is null) yield break;
        for (int i = other.Count - 1, j = 0; j < other.Count; i = j++)
        {
            if (other[i].IsSame(other[j])) continue;
            var sideways = Inside * (other[j] - other[i]).Unit.Left;
            foreach (var piece in Split(other[i], other[j], area))
            {
                var middle = piece.A.Towards(piece.B, 0.5);
                if (Holds(area, middle + sideways) && Holds(area, middle - sideways)) yield return piece;
            }
        }
    }

    /// <summary>The pieces of a line that lie inside a ring, or outside it; the whole line without a ring.</summary>
    public static IEnumerable<(Point2 A, Point2 B)> Pieces(Point2 a, Point2 b, IReadOnlyList<Point2>? ring, bool inside) =>
        ring is null ? [(a, b)] : Split(a, b, ring).Where(p => Holds(ring, p.A.Towards(p.B, 0.5)) == inside);

    /// <summary>A line cut wherever a side of a ring crosses it or ends on it.</summary>
    private static (Point2 A, Point2 B)[] Split(Point2 a, Point2 b, IReadOnlyList<Point2> ring)
    {
        var (along, length) = ((b - a).Unit, a.DistanceTo(b));
        // A side cuts a line once at most.
        Span<double> cuts = ring.Count <= 30 ? stackalloc double[32] : new double[ring.Count + 2];
        (cuts[0], cuts[1]) = (0, length);
        var n = 2;
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++)
        {
            var (from, to) = (along.Cross(ring[i] - a), along.Cross(ring[j] - a));
            // A corner on the line cuts it; so does a side that passes it.
            if (Math.Abs(to) <= Tolerance.Same) cuts[n] = along.Dot(ring[j] - a);
            else if (from < -Tolerance.Same && to > Tolerance.Same || from > Tolerance.Same && to < -Tolerance.Same) cuts[n] = along.Dot(ring[i].Towards(ring[j], from / (from - to)) - a);
            else continue;
            if (cuts[n] >= 0 && cuts[n] <= length) n++;
        }
        if (n == 2) return length > Tolerance.Same ? [(a, b)] : [];
        cuts = cuts[..n];
        cuts.Sort();
        var pieces = new List<(Point2, Point2)>(n - 1);
        for (var k = 1; k < n; k++)
            if (cuts[k] - cuts[k - 1] > Tolerance.Same) pieces.Add((a + cuts[k - 1] * along, a + cuts[k] * along));
        return [.. pieces];
    }
}
