using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Steps;

/// <summary>Places on the edges of a boundary.</summary>
internal static class BoundaryPlaces
{
    // How far the first and the last face reach beyond their ends, mm.
    private const double Beyond = 100;

    /// <summary>
    /// The edge a riser's face point belongs to; at a corner between two faces the later one, because the riser's section lies behind its face
    /// (setting-out.md 2.2, even numbers of tapered steps).
    /// </summary>
    public static int EdgeOf(Boundary boundary, Point2 p)
    {
        var (best, off) = (0, double.PositiveInfinity);
        for (var i = 0; i < boundary.Edges.Length; i++)
        {
            var edge = boundary.Edges[i];
            if (edge.Kind == BoundaryKind.NewelJog || edge.Length <= Tolerance.Same) continue;
            var along = (p - edge.From).Dot(edge.Along);
            // The ends reach on a little, no further: a stair that turns may pass the line of its own first or last face again.
            var held = Math.Clamp(along, i == 0 ? -Beyond : 0, i == boundary.Edges.Length - 1 ? edge.Length + Beyond : edge.Length);
            var distance = p.DistanceTo(edge.From + held * edge.Along);
            if (distance <= off + 1e-6) (best, off) = (i, Math.Min(distance, off));
        }
        return best;
    }

    /// <summary>Where a line meets an edge (unbounded), as a station from its lower end; null when parallel.</summary>
    public static double? On(BoundaryEdge edge, Line2 line)
    {
        var own = new Line2(edge.From, edge.Along);
        return own.Cross(line) is { } p ? own.Station(p) : null;
    }

    /// <summary>Sine of the angle between an edge and a line.</summary>
    public static double Sine(BoundaryEdge edge, Line2 line) => Math.Abs(edge.Along.Cross(line.Along));
}
