using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Steps;

/// <summary>
/// Where the end of a tread, nosing piece or riser meets one edge of a boundary: stations along that edge from its lower end, mm. Both the piece
/// (in plan) and its carrier (in development) are made from these.
/// </summary>
/// <param name="Edge">The edge.</param>
/// <param name="From">Where the section begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="HasFront">Whether it begins at the piece's own front line (nosing or riser face), not at the edge's end.</param>
/// <param name="HasBack">Whether it ends at the piece's own back line.</param>
/// <param name="NosingAt">Where the front line, produced, meets the edge's line; before the section where the nosing lies on an earlier edge. NaN when parallel.</param>
/// <param name="FrontSine">Sine of the angle between the front line and the edge: lengths along the edge grow by 1 over it.</param>
/// <param name="BackSine">Likewise for the back line.</param>
/// <param name="Butts">True when the piece only butts here and is not let in.</param>
public sealed record Section(
    BoundaryEdge Edge, double From, double To, bool HasFront, bool HasBack, double NosingAt, double FrontSine, double BackSine, bool Butts)
{
    /// <summary>Length along the face, mm.</summary>
    public double Length => To - From;
}
