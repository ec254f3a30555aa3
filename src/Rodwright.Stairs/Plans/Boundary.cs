using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Plans;

/// <summary>
/// One side of the stair in plan: the visible faces of strings and newels as one line, in climbing order. Stations are measured along it from its
/// start, jogs included.
/// </summary>
public sealed class Boundary
{
    // How far the first and the last face reach beyond their ends, mm.
    private const double Beyond = 100;

    // Two places this near, mm, are one.
    private const double Near = 1e-6;

    private readonly double[] starts;

    /// <summary>A boundary of joined edges.</summary>
    /// <exception cref="ArgumentException">No edges, or neighbours that do not meet.</exception>
    public Boundary(IEnumerable<BoundaryEdge> edges)
    {
        Edges = [.. edges];
        if (Edges.Length == 0) throw new ArgumentException("a boundary has edges", nameof(edges));
        starts = new double[Edges.Length + 1];
        for (var i = 0; i < Edges.Length; i++)
        {
            if (i > 0 && !Edges[i].From.IsSame(Edges[i - 1].To)) throw new ArgumentException("edges meet end to end", nameof(edges));
            starts[i + 1] = starts[i] + Edges[i].Length;
        }
    }

    /// <summary>The edges, in climbing order.</summary>
    public ImmutableArray<BoundaryEdge> Edges { get; }

    /// <summary>Length, jogs included.</summary>
    public double Length => starts[^1];

    /// <summary>Station where edge i begins.</summary>
    public double StartOf(int edge) => starts[edge];

    /// <summary>The edge a station lies on; at a corner the one that begins there.</summary>
    public int EdgeAt(double station)
    {
        for (var i = Edges.Length - 1; i > 0; i--) if (station >= starts[i] - Tolerance.Same) return i;
        return 0;
    }

    /// <summary>The point at a station.</summary>
    public Point2 At(double station)
    {
        var i = EdgeAt(station);
        return Edges[i].From + (station - starts[i]) * Edges[i].Along;
    }

    /// <summary>
    /// Where a line meets the boundary: every crossing with an edge that is not a jog, as stations in order. The first and last edges reach on
    /// beyond their ends. A corner counts once.
    /// </summary>
    public IReadOnlyList<double> Crossings(Line2 line)
    {
        var found = new List<double>();
        for (var i = 0; i < Edges.Length; i++)
        {
            var edge = Edges[i];
            if (edge.Kind == BoundaryKind.NewelJog || edge.Length <= Tolerance.Same) continue;
            var own = new Line2(edge.From, edge.Along);
            if (own.Cross(line) is not { } point) continue;
            var along = own.Station(point);
            var low = i == 0 ? double.NegativeInfinity : -Tolerance.Same;
            var high = i == Edges.Length - 1 ? double.PositiveInfinity : edge.Length + Tolerance.Same;
            if (along < low || along > high) continue;
            var station = starts[i] + along;
            if (found.Count == 0 || Math.Abs(found[^1] - station) > 1e-6) found.Add(station);
        }
        return found;
    }

    /// <summary>
    /// The edges that points in climbing order lie on, jogs left out. At a corner between two faces the later one counts, because a riser's section lies behind its
    /// face (setting-out.md 2.2, even numbers of tapered steps). A stair may pass over itself: of two faces in one place, each point takes the next one up from
    /// the point before it. The first and last edges reach on a little beyond their ends.
    /// </summary>
    public ImmutableArray<int> EdgesOf(IEnumerable<Point2> points)
    {
        var found = ImmutableArray.CreateBuilder<int>();
        var from = 0;
        foreach (var p in points) found.Add(from = EdgeOf(p, from));
        return found.ToImmutable();
    }

    /// <summary>The station of a point on an edge.</summary>
    public double StationOn(int edge, Point2 p) => starts[edge] + (p - Edges[edge].From).Dot(Edges[edge].Along);

    private int EdgeOf(Point2 p, int from)
    {
        var (best, off) = (from, double.PositiveInfinity);
        for (var i = from; i < Edges.Length; i++)
        {
            var edge = Edges[i];
            if (edge.Kind == BoundaryKind.NewelJog || edge.Length <= Tolerance.Same) continue;
            var along = (p - edge.From).Dot(edge.Along);
            var held = Math.Clamp(along, i == 0 ? -Beyond : 0, i == Edges.Length - 1 ? edge.Length + Beyond : edge.Length);
            var distance = p.DistanceTo(edge.From + held * edge.Along);
            // Found, and the face after it does not begin there.
            if (off <= Near && distance > Near) break;
            if (distance <= off + Near) (best, off) = (i, Math.Min(distance, off));
        }
        return best;
    }

    /// <summary>Length of face between two stations; jogs are not counted.</summary>
    public double FaceLength(double from, double to)
    {
        var sum = to - from;
        for (var i = 0; i < Edges.Length; i++)
        {
            if (Edges[i].Kind != BoundaryKind.NewelJog) continue;
            sum -= Math.Max(0, Math.Min(to, starts[i + 1]) - Math.Max(from, starts[i]));
        }
        return sum;
    }

    /// <summary>Mirrored in the y axis, still in climbing order.</summary>
    public Boundary Mirrored() => new(Edges.Select(e => e.Mirrored()));
}
