using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Rodwright.Geometry;

/// <summary>A corner of a <see cref="Path2"/>: a point, and the bulge of the edge that leaves it (0 is straight; tan(sweep/4), positive anticlockwise).</summary>
public readonly record struct Vertex2(Point2 At, double Bulge = 0);

/// <summary>
/// A run of straight edges and circular arcs in a plane, open or closed; arcs stay arcs. Immutable. A closed path does not repeat its first vertex.
/// Closed outlines run anticlockwise unless said otherwise.
/// </summary>
public sealed class Path2
{
    // Boxed, so that two threads that ask at once both see a whole box.
    private StrongBox<Box2>? bounds;
    private IReadOnlyList<Point2>? usual;

    /// <summary>A path through the given vertices. Edges too shallow to be arcs (<see cref="Tolerance.Straight"/>), or without length, are straight.</summary>
    /// <exception cref="ArgumentException">Fewer than two vertices.</exception>
    public Path2(IEnumerable<Vertex2> vertices, bool closed) : this([.. vertices], closed, nameof(vertices))
    {
    }

    private Path2(ImmutableArray<Vertex2> vertices, bool closed, string name)
    {
        Vertices = vertices;
        Closed = closed;
        if (Vertices.Length < 2) throw new ArgumentException("a path has at least two vertices", name);
        for (var i = 0; i < Vertices.Length; i++)
        {
            if (Vertices[i].Bulge == 0) continue;
            if (Math.Abs(Vertices[i].Bulge) <= Tolerance.Straight || Vertices[i].At == Vertices[(i + 1) % Vertices.Length].At)
                Vertices = Vertices.SetItem(i, new(Vertices[i].At));
        }
    }

    /// <summary>The vertices, in order.</summary>
    public ImmutableArray<Vertex2> Vertices { get; }

    /// <summary>Whether the last vertex is joined to the first.</summary>
    public bool Closed { get; }

    /// <summary>How many edges there are.</summary>
    public int EdgeCount => Closed ? Vertices.Length : Vertices.Length - 1;

    /// <summary>Edge i: its two ends and its bulge.</summary>
    public (Point2 From, Point2 To, double Bulge) Edge(int i) =>
        (Vertices[i].At, Vertices[(i + 1) % Vertices.Length].At, Vertices[i].Bulge);

    /// <summary>The smallest box round the path, arcs included.</summary>
    public Box2 Bounds => (bounds ??= new(FindBounds())).Value;

    /// <summary>Length along all edges.</summary>
    public double Length
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < EdgeCount; i++)
            {
                var (a, b, bulge) = Edge(i);
                sum += bulge == 0 ? a.DistanceTo(b) : new ChordArc(a, b, bulge).Length;
            }
            return sum;
        }
    }

    /// <summary>Signed area of a closed path, arcs included: positive when it runs anticlockwise.</summary>
    public double Area
    {
        get
        {
            var twice = 0.0;
            for (var i = 0; i < Vertices.Length; i++)
            {
                var (a, b, bulge) = (Vertices[i].At, Vertices[(i + 1) % Vertices.Length].At, Vertices[i].Bulge);
                twice += a.X * b.Y - b.X * a.Y;
                if (bulge != 0) twice += 2 * new ChordArc(a, b, bulge).SegmentArea;
            }
            return twice / 2;
        }
    }

    /// <summary>A closed polygon of straight edges.</summary>
    public static Path2 Polygon(params IEnumerable<Point2> points) => new(points.Select(p => new Vertex2(p)), true);

    /// <summary>An open line of straight edges.</summary>
    public static Path2 Polyline(params IEnumerable<Point2> points) => new(points.Select(p => new Vertex2(p)), false);

    /// <summary>A closed rectangle square to the frame, anticlockwise from its lowest corner.</summary>
    public static Path2 Rectangle(double minX, double minY, double maxX, double maxY) =>
        Polygon(new Point2(minX, minY), new Point2(maxX, minY), new Point2(maxX, maxY), new Point2(minX, maxY));

    /// <summary>A full circle, anticlockwise, as two half-turn arcs.</summary>
    public static Path2 Circle(Point2 centre, double radius) =>
        new([new(centre + new Vector2(radius, 0), 1), new(centre - new Vector2(radius, 0), 1)], true);

    /// <summary>The path with every vertex carried to another place by a rigid, unmirrored motion.</summary>
    public Path2 Moved(Func<Point2, Point2> motion)
    {
        var moved = new Vertex2[Vertices.Length];
        for (var i = 0; i < moved.Length; i++) moved[i] = new(motion(Vertices[i].At), Vertices[i].Bulge);
        return new(ImmutableCollectionsMarshal.AsImmutableArray(moved), Closed, "");
    }

    /// <summary>The path moved by a displacement.</summary>
    public Path2 Moved(Vector2 by) => Moved(p => p + by);

    /// <summary>Mirrored in the y axis and run the other way round, so that an anticlockwise outline stays anticlockwise.</summary>
    public Path2 Mirrored() => MapMirrored(p => p.Mirrored);

    /// <summary>Carried by a motion that mirrors; run the other way round, so that an anticlockwise outline stays anticlockwise.</summary>
    public Path2 MapMirrored(Func<Point2, Point2> mirror)
    {
        // The motion flips each bulge's sign, and running backwards flips it again: the signs stay.
        return new(Reversed().Vertices.Select(v => new Vertex2(mirror(v.At), -v.Bulge)), Closed);
    }

    /// <summary>The same path run the other way.</summary>
    public Path2 Reversed()
    {
        var n = Vertices.Length;
        var back = new Vertex2[n];
        for (var i = 0; i < n; i++)
        {
            var edge = n - 2 - i; // the edge that is left from the reversed vertex i
            var bulge = edge >= 0 ? -Vertices[edge].Bulge : Closed ? -Vertices[n - 1].Bulge : 0;
            back[i] = new(Vertices[n - 1 - i].At, bulge);
        }
        return new(back, Closed);
    }

    /// <summary>The vertices of the path with each arc replaced by chords that leave it by at most <paramref name="chord"/>.</summary>
    public IReadOnlyList<Point2> Flattened(double chord = Tolerance.Chord) =>
        // The usual chords are asked for again and again: by the proof, point by point.
        chord == Tolerance.Chord ? usual ??= Chords(chord).AsReadOnly() : Chords(chord);

    private List<Point2> Chords(double chord)
    {
        var points = new List<Point2>(Vertices.Length);
        for (var i = 0; i < Vertices.Length; i++)
        {
            points.Add(Vertices[i].At);
            if (Vertices[i].Bulge == 0 || (!Closed && i == Vertices.Length - 1)) continue;
            var (a, b, bulge) = Edge(i);
            var arc = new ChordArc(a, b, bulge);
            var n = arc.Chords(chord);
            for (var k = 1; k < n; k++) points.Add(arc.At((double)k / n));
        }
        return points;
    }

    /// <summary>Whether a point lies inside a closed path, arcs counted as chords of <see cref="Tolerance.Chord"/>; points on the edge may fall either way.</summary>
    public bool Holds(Point2 p)
    {
        var ring = Flattened();
        var inside = false;
        for (int i = 0, j = ring.Count - 1; i < ring.Count; j = i++)
        {
            if (ring[i].Y > p.Y != ring[j].Y > p.Y &&
                p.X < (ring[j].X - ring[i].X) * (p.Y - ring[i].Y) / (ring[j].Y - ring[i].Y) + ring[i].X) inside = !inside;
        }
        return inside;
    }

    /// <summary>Distance from a point to the nearest edge, arcs counted exactly.</summary>
    public double DistanceTo(Point2 p)
    {
        var best = double.PositiveInfinity;
        for (var i = 0; i < EdgeCount; i++)
        {
            var (a, b, bulge) = Edge(i);
            best = Math.Min(best, bulge == 0 ? ToSegment(p, a, b) : new ChordArc(a, b, bulge).DistanceTo(p));
        }
        return best;
    }

    private static double ToSegment(Point2 p, Point2 a, Point2 b)
    {
        var d = b - a;
        var l2 = d.Dot(d);
        var t = l2 == 0 ? 0 : Math.Clamp((p - a).Dot(d) / l2, 0, 1);
        return p.DistanceTo(a + t * d);
    }

    private Box2 FindBounds()
    {
        var box = Box2.Of(Vertices.Select(v => v.At));
        for (var i = 0; i < EdgeCount; i++)
        {
            var (a, b, bulge) = Edge(i);
            if (bulge == 0) continue;
            var arc = new ChordArc(a, b, bulge);
            for (var q = 0; q < 4; q++)
            {
                var turn = Math.IEEERemainder(q * Math.PI / 2 - arc.Start, 2 * Math.PI);
                if (arc.Sweep < 0) turn = -turn;
                if (turn < 0) turn += 2 * Math.PI;
                if (turn <= Math.Abs(arc.Sweep)) box = box.With(arc.At(turn / Math.Abs(arc.Sweep)));
            }
        }
        return box;
    }
}
