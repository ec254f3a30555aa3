using System.Collections.Immutable;

namespace Rodwright.Geometry.Solids;

/// <summary>Cuts a face into triangles by ears, its holes first bridged to its outline. No corner is added or left out, so that neighbours still meet.</summary>
internal static class FaceTriangles
{
    /// <summary>Adds the triangles of a face.</summary>
    public static void Add(Solid solid, SolidFace face, ImmutableArray<int>.Builder triangles)
    {
        if (face.Holes.IsEmpty && face.Outer.Length == 3)
        {
            triangles.AddRange(face.Outer);
            return;
        }
        var flat = Flatten(face.Normal);
        var ring = face.Outer.ToList();
        var at = solid.Vertices;
        foreach (var hole in face.Holes.OrderByDescending(h => h.Max(i => flat(at[i]).X))) Bridge(ring, hole, i => flat(at[i]));
        Clip(ring, [.. ring.Select(i => flat(at[i]))], triangles);
    }

    /// <summary>Looks along the axis the face is squarest to: nothing is rounded, and the turn of corners stays.</summary>
    private static Func<Point3, Point2> Flatten(Vector3 n)
    {
        var (x, y, z) = (Math.Abs(n.X), Math.Abs(n.Y), Math.Abs(n.Z));
        if (z >= x && z >= y) return n.Z > 0 ? p => new(p.X, p.Y) : p => new(p.Y, p.X);
        if (x >= y) return n.X > 0 ? p => new(p.Y, p.Z) : p => new(p.Z, p.Y);
        return n.Y > 0 ? p => new(p.Z, p.X) : p => new(p.X, p.Z);
    }

    /// <summary>Opens the ring at a corner that sees the hole's rightmost corner, and runs it round the hole.</summary>
    private static void Bridge(List<int> ring, ImmutableArray<int> hole, Func<int, Point2> at)
    {
        var start = Enumerable.Range(0, hole.Length).MaxBy(i => at(hole[i]).X);
        var p = at(hole[start]);
        // The nearest edge straight to the right, then whichever corner within that triangle stands closest to the line of sight.
        var (best, edge) = (double.PositiveInfinity, -1);
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (at(ring[i]), at(ring[(i + 1) % ring.Count]));
            if (a.Y > p.Y || b.Y < p.Y || a.Y == b.Y) continue; // only edges that run up have the face on their left
            var x = a.X + (b.X - a.X) * (p.Y - a.Y) / (b.Y - a.Y);
            if (x >= p.X && x < best) (best, edge) = (x, i);
        }
        if (edge < 0) throw new InvalidOperationException("a hole lies outside its face");
        var seen = at(ring[edge]).X > at(ring[(edge + 1) % ring.Count]).X ? edge : (edge + 1) % ring.Count;
        var (hit, m) = (new Point2(best, p.Y), at(ring[seen]));
        var slant = double.PositiveInfinity;
        for (var i = 0; i < ring.Count; i++)
        {
            var q = at(ring[i]);
            if (q.X < p.X || !Within(q, p, hit, m)) continue;
            var (before, after) = (at(ring[(i + ring.Count - 1) % ring.Count]), at(ring[(i + 1) % ring.Count]));
            if (!Opens(before, q, after, p)) continue;
            var steep = q.X == p.X ? (q == p ? 0 : double.MaxValue) : Math.Abs(q.Y - p.Y) / (q.X - p.X);
            if (steep < slant || (steep == slant && q.X < at(ring[seen]).X)) (slant, seen) = (steep, i);
        }
        var round = Enumerable.Range(0, hole.Length + 1).Select(k => hole[(start + k) % hole.Length]);
        ring.InsertRange(seen + 1, round.Append(ring[seen]));
    }

    private static bool Within(Point2 q, Point2 a, Point2 b, Point2 c)
    {
        var (x, y, z) = ((b - a).Cross(q - a), (c - b).Cross(q - b), (a - c).Cross(q - c));
        return (x >= 0 && y >= 0 && z >= 0) || (x <= 0 && y <= 0 && z <= 0);
    }

    /// <summary>Whether the corner's own side holds the direction to p.</summary>
    private static bool Opens(Point2 before, Point2 corner, Point2 after, Point2 p)
    {
        var (left, right) = ((after - corner).Cross(p - corner) >= 0, (corner - before).Cross(p - corner) >= 0);
        return (corner - before).Cross(after - corner) >= 0 ? left && right : left || right;
    }

    private static void Clip(List<int> ring, Point2[] at, ImmutableArray<int>.Builder triangles)
    {
        var n = ring.Count;
        var (before, after, hollow) = (new int[n], new int[n], new bool[n]);
        for (var i = 0; i < n; i++) (before[i], after[i]) = ((i + n - 1) % n, (i + 1) % n);
        for (var i = 0; i < n; i++) hollow[i] = Turn(i) <= 0;
        var hollows = Enumerable.Range(0, n).Where(i => hollow[i]).ToList();
        var (left, here, missed) = (n, 0, 0);
        while (left > 3)
        {
            // When a whole round finds no clear ear (corners that touch), any corner that turns the right way will do, then any at all.
            if ((missed > 2 * left) || (Turn(here) > 0 && (missed > left || IsEar(here))))
            {
                Emit(here);
                var (a, b) = (before[here], after[here]);
                (after[a], before[b]) = (b, a);
                hollow[here] = false;
                if (hollow[a]) hollow[a] = Turn(a) <= 0;
                if (hollow[b]) hollow[b] = Turn(b) <= 0;
                if (left % 32 == 0) hollows.RemoveAll(i => !hollow[i]);
                (left, missed, here) = (left - 1, 0, after[b]);
                continue;
            }
            (missed, here) = (missed + 1, after[here]);
        }
        Emit(here);

        double Turn(int i) => (at[i] - at[before[i]]).Cross(at[after[i]] - at[i]);

        void Emit(int i)
        {
            triangles.Add(ring[before[i]]);
            triangles.Add(ring[i]);
            triangles.Add(ring[after[i]]);
        }

        bool IsEar(int i)
        {
            var (a, b, c) = (at[before[i]], at[i], at[after[i]]);
            var (minX, maxX) = (Math.Min(a.X, Math.Min(b.X, c.X)), Math.Max(a.X, Math.Max(b.X, c.X)));
            var (minY, maxY) = (Math.Min(a.Y, Math.Min(b.Y, c.Y)), Math.Max(a.Y, Math.Max(b.Y, c.Y)));
            foreach (var k in hollows)
            {
                if (!hollow[k]) continue;
                var p = at[k];
                if (p.X < minX || p.X > maxX || p.Y < minY || p.Y > maxY || p == a || p == b || p == c) continue;
                if ((b - a).Cross(p - a) >= 0 && (c - b).Cross(p - b) >= 0 && (a - c).Cross(p - c) >= 0) return false;
            }
            return true;
        }
    }
}
