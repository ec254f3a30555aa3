using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Steps;

/// <summary>Places on the edges of a boundary.</summary>
internal static class BoundaryPlaces
{
    /// <summary>Where a line meets an edge (unbounded), as a station from its lower end; null when parallel.</summary>
    public static double? On(BoundaryEdge edge, Line2 line)
    {
        var own = new Line2(edge.From, edge.Along);
        return own.Cross(line) is { } p ? own.Station(p) : null;
    }

    /// <summary>Sine of the angle between an edge and a line.</summary>
    public static double Sine(BoundaryEdge edge, Line2 line) => Math.Abs(edge.Along.Cross(line.Along));
}
