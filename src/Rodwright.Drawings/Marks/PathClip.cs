using Rodwright.Geometry;

namespace Rodwright.Drawings.Marks;

/// <summary>Cuts paths to a window.</summary>
internal static class PathClip
{
    /// <summary>The pieces of a path inside a window, open, arcs still arcs; edges met within the window stay joined.</summary>
    public static IReadOnlyList<Path2> Inside(Path2 path, Box2 window)
    {
        var pieces = new List<List<Vertex2>>();
        for (var i = 0; i < path.EdgeCount; i++)
        {
            var (a, b, bulge) = path.Edge(i);
            Arc2? arc = bulge == 0 ? null : Arc2.FromBulge(a, b, bulge);
            var cuts = Cuts(a, b, arc, window);
            for (var k = 0; k + 1 < cuts.Count; k++)
            {
                var (from, to) = (cuts[k], cuts[k + 1]);
                if (to - from < 1e-9 || !Holds(window, At(a, b, arc, (from + to) / 2))) continue;
                var (p, q) = (At(a, b, arc, from), At(a, b, arc, to));
                var part = arc is { } curve ? Angle.Tan(curve.Sweep * (to - from) / 4) : 0;
                if (pieces.Count > 0 && pieces[^1][^1].At.DistanceTo(p) < 1e-6) pieces[^1][^1] = new(p, part);
                else pieces.Add([new(p, part)]);
                pieces[^1].Add(new(q));
            }
        }
        // A closed path that is seen where it starts is one piece there, not two.
        if (path.Closed && pieces.Count > 1 && pieces[^1][^1].At.DistanceTo(pieces[0][0].At) < 1e-6)
        {
            pieces[^1].RemoveAt(pieces[^1].Count - 1);
            pieces[^1].AddRange(pieces[0]);
            pieces.RemoveAt(0);
        }
        return [.. pieces.Select(p => new Path2(p, false))];
    }

    /// <summary>The part of a filled outline inside a window, arcs as chords; null when none is.</summary>
    public static Path2? Filled(Path2 outline, Box2 window)
    {
        List<Point2> ring = [.. outline.Flattened()];
        ring = Side(ring, p => p.X - window.MinX);
        ring = Side(ring, p => window.MaxX - p.X);
        ring = Side(ring, p => p.Y - window.MinY);
        ring = Side(ring, p => window.MaxY - p.Y);
        return ring.Count < 3 ? null : Path2.Polygon(ring);
    }

    private static List<Point2> Side(List<Point2> ring, Func<Point2, double> inward)
    {
        var kept = new List<Point2>(ring.Count + 4);
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            var (da, db) = (inward(a), inward(b));
            if (da >= 0) kept.Add(a);
            if (da < 0 != db < 0) kept.Add(a.Towards(b, da / (da - db)));
        }
        return kept;
    }

    private static Point2 At(Point2 a, Point2 b, Arc2? arc, double part) =>
        part <= 0 ? a : part >= 1 ? b : arc is { } curve ? curve.At(part) : a.Towards(b, part);

    private static bool Holds(Box2 w, Point2 p) => p.X >= w.MinX && p.X <= w.MaxX && p.Y >= w.MinY && p.Y <= w.MaxY;

    private static List<double> Cuts(Point2 a, Point2 b, Arc2? arc, Box2 w)
    {
        var cuts = new List<double> { 0, 1 };
        if (arc is { } curve)
        {
            Turns(w.MinX - curve.Centre.X, false);
            Turns(w.MaxX - curve.Centre.X, false);
            Turns(w.MinY - curve.Centre.Y, true);
            Turns(w.MaxY - curve.Centre.Y, true);
        }
        else
        {
            Part(w.MinX - a.X, b.X - a.X);
            Part(w.MaxX - a.X, b.X - a.X);
            Part(w.MinY - a.Y, b.Y - a.Y);
            Part(w.MaxY - a.Y, b.Y - a.Y);
        }
        cuts.Sort();
        return cuts;

        void Part(double reach, double whole)
        {
            if (whole != 0 && reach / whole is > 0 and < 1) cuts.Add(reach / whole);
        }

        void Turns(double offset, bool level)
        {
            var c = arc.Value;
            if (Math.Abs(offset) >= c.Radius) return;
            var turn = level ? Angle.Asin(offset / c.Radius) : Angle.Acos(offset / c.Radius);
            ReadOnlySpan<double> both = level ? [turn, Math.PI - turn] : [turn, -turn];
            foreach (var direction in both)
            {
                var along = Math.IEEERemainder(direction - c.Start, 2 * Math.PI) * Math.Sign(c.Sweep);
                if (along < 0) along += 2 * Math.PI;
                if (along > 0 && along < Math.Abs(c.Sweep)) cuts.Add(along / Math.Abs(c.Sweep));
            }
        }
    }
}
