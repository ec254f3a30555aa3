using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.OverlayNG;
using NetTopologySuite.Operation.Union;

namespace Rodwright.Geometry;

/// <summary>
/// Area arithmetic on closed paths, done by NetTopologySuite behind this door. Arcs go in as chords; where the result runs along a chord
/// of an arc that went in, the arc is put back, so that arcs stay arcs.
/// </summary>
public static class Region
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>The union of closed paths: outer outlines anticlockwise, holes (if any) clockwise.</summary>
    public static IReadOnlyList<Path2> Union(IReadOnlyList<Path2> paths)
    {
        var arcs = new ArcMemory(paths);
        return Outlines(CascadedPolygonUnion.Union([.. paths.Select(arcs.ToPolygon)]), arcs);
    }

    /// <summary>Whether a closed path nowhere crosses or touches itself, arcs counted as chords.</summary>
    public static bool IsSimple(Path2 path) => new ArcMemory([path]).ToPolygon(path).IsValid;

    /// <summary>What of <paramref name="whole"/> lies outside <paramref name="taken"/>: outer outlines anticlockwise, holes clockwise.</summary>
    public static IReadOnlyList<Path2> Difference(Path2 whole, Path2 taken) => Difference(whole, [taken]);

    /// <summary>What of <paramref name="whole"/> lies outside all of <paramref name="taken"/>, of which each closed path counts by itself: outer outlines anticlockwise, holes clockwise.</summary>
    public static IReadOnlyList<Path2> Difference(Path2 whole, IReadOnlyList<Path2> taken)
    {
        var arcs = new ArcMemory([whole, .. taken]);
        var (from, off) = (arcs.ToPolygon(whole), taken.Count == 1 ? arcs.ToPolygon(taken[0]) : CascadedPolygonUnion.Union([.. taken.Select(arcs.ToPolygon)]));
        try
        {
            return Outlines(OverlayNGRobust.Overlay(from, off, NetTopologySuite.Operation.Overlay.SpatialFunction.Difference), arcs);
        }
        catch (TopologyException)
        {
            // A path that crosses itself is taken for the areas it goes round.
            return Outlines(OverlayNGRobust.Overlay(GeometryFixer.Fix(from), GeometryFixer.Fix(off), NetTopologySuite.Operation.Overlay.SpatialFunction.Difference), arcs);
        }
    }

    private static List<Path2> Outlines(NetTopologySuite.Geometries.Geometry shape, ArcMemory arcs)
    {
        var outlines = new List<Path2>();
        for (var i = 0; i < shape.NumGeometries; i++)
        {
            if (shape.GetGeometryN(i) is not Polygon polygon || polygon.Area < 1e-6) continue;
            if (arcs.ToPath((LinearRing)polygon.ExteriorRing, anticlockwise: true) is not { } outline) continue;
            outlines.Add(outline);
            foreach (var inner in polygon.InteriorRings) if (arcs.ToPath((LinearRing)inner, anticlockwise: false) is { } hole) outlines.Add(hole);
        }
        return outlines;
    }

    /// <summary>Remembers which chord came from which arc, to put arcs back after an overlay.</summary>
    private sealed class ArcMemory
    {
        private const double Near = 1e-6; // mm: what lies this near an arc lies on it

        private readonly List<(ChordArc Arc, double Chord)> arcs = [];

        public ArcMemory(IReadOnlyList<Path2> paths)
        {
            foreach (var path in paths)
            {
                for (var i = 0; i < path.EdgeCount; i++)
                {
                    var (a, b, bulge) = path.Edge(i);
                    if (bulge == 0) continue;
                    var arc = new ChordArc(a, b, bulge);
                    arcs.Add((arc, a.DistanceTo(arc.At(1.0 / arc.Chords(Tolerance.Chord)))));
                }
            }
        }

        public Polygon ToPolygon(Path2 path)
        {
            var ring = path.Flattened();
            var coordinates = new Coordinate[ring.Count + 1];
            for (var i = 0; i < ring.Count; i++) coordinates[i] = new(ring[i].X, ring[i].Y);
            coordinates[^1] = coordinates[0].Copy();
            return Factory.CreatePolygon(coordinates);
        }

        /// <summary>The ring as a path, arcs put back; null when it is so thin (<see cref="Tolerance.Same"/>) that nothing lies within it.</summary>
        public Path2? ToPath(LinearRing ring, bool anticlockwise)
        {
            var points = Distinct(ring.Coordinates.Select(c => new Point2(c.X, c.Y)).SkipLast(1));
            if (ring.IsCCW != anticlockwise) points.Reverse();
            if (arcs.Count == 0) return Straightened(points) is { Count: > 2 } corners ? Path2.Polygon(corners) : null;
            var n = points.Count;
            var owner = new int[n]; // the arc that edge i runs along, or -1
            for (var i = 0; i < n; i++) owner[i] = OwnerOf(points[i], points[(i + 1) % n]);
            var start = 0;
            while (start < n && owner[start] != -1 && owner[start] == owner[(start + n - 1) % n]) start++;
            start %= n;
            var vertices = new List<Vertex2>();
            for (var k = 0; k < n;)
            {
                var i = (start + k) % n;
                var run = 1;
                if (owner[i] != -1) while (k + run < n && owner[(i + run) % n] == owner[i]) run++;
                vertices.Add(new(points[i], owner[i] == -1 ? 0 : BulgeOf(arcs[owner[i]].Arc, points, i, run)));
                k += run;
            }
            return vertices.Count > 2 || vertices.Any(v => v.Bulge != 0) ? new(vertices, true) : null;
        }

        /// <summary>Corners that two of the paths share but for rounding come back as two points: one is kept, or neither would seem to turn.</summary>
        private static List<Point2> Distinct(IEnumerable<Point2> ring)
        {
            var kept = new List<Point2>();
            foreach (var p in ring) if (kept.Count == 0 || !kept[^1].IsSame(p)) kept.Add(p);
            while (kept.Count > 1 && kept[^1].IsSame(kept[0])) kept.RemoveAt(kept.Count - 1);
            return kept;
        }

        /// <summary>The corners at which the ring turns, each judged from the last one kept, so that a turn made in two short steps is not lost.</summary>
        private static List<Point2> Straightened(List<Point2> points)
        {
            var (n, kept) = (points.Count, new List<Point2>());
            var start = Enumerable.Range(0, n).FirstOrDefault(i => Turns(points[(i + n - 1) % n], points[i], points[(i + 1) % n]));
            for (var k = 0; k < n; k++)
            {
                var here = points[(start + k) % n];
                if (k == 0 || Turns(kept[^1], here, points[(start + k + 1) % n])) kept.Add(here);
            }
            return kept;
        }

        private static bool Turns(Point2 before, Point2 here, Point2 after) => Math.Abs((here - before).Cross(after - here)) > 1e-9 * (1 + before.DistanceTo(after));

        private int OwnerOf(Point2 a, Point2 b)
        {
            for (var i = 0; i < arcs.Count; i++)
            {
                var (arc, longest) = arcs[i];
                // A side that merely joins two points of the arc is longer than one of its chords.
                if (a.DistanceTo(b) <= longest + Near && arc.Holds(a, Near) && arc.Holds(b, Near)) return i;
            }
            return -1;
        }

        /// <summary>Bulge of the arc that <paramref name="run"/> chords from point <paramref name="first"/> stand for. Added up chord by chord: it may be more than half a turn.</summary>
        private static double BulgeOf(ChordArc arc, List<Point2> points, int first, int run)
        {
            var turn = 0.0;
            for (var k = first; k < first + run; k++) turn += arc.Turn(points[k % points.Count], points[(k + 1) % points.Count]);
            return Angle.Tan(turn / 4);
        }
    }
}
