using Rodwright.Geometry;

namespace Rodwright.Stairs.Plans;

/// <summary>One straight piece of a boundary, in climbing order.</summary>
/// <param name="From">Lower end.</param>
/// <param name="To">Upper end.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Carrier">Id of the string board or newel whose face it is.</param>
/// <param name="Looks">For a newel's face: S, E, N or W, the way it looks in the setting-out frame of its newel; empty for strings.</param>
public sealed record BoundaryEdge(Point2 From, Point2 To, BoundaryKind Kind, string Carrier, string Looks)
{
    /// <summary>Length, mm.</summary>
    public double Length => From.DistanceTo(To);

    /// <summary>Unit direction up the stair.</summary>
    public Vector2 Along => (To - From).Unit;

    /// <summary>Mirrored in the y axis.</summary>
    public BoundaryEdge Mirrored() => this with { From = From.Mirrored, To = To.Mirrored };
}
