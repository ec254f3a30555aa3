using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Steps;

/// <summary>The sections of one piece on both boundaries, and the plan lines it lies between.</summary>
/// <param name="Step">Step number (a riser's is its own number).</param>
/// <param name="Front">Front line, inner to outer: nosing line or riser face.</param>
/// <param name="Back">Back line, inner to outer.</param>
/// <param name="Up">Unit direction up the stair, square to the front line.</param>
/// <param name="Inner">Sections on the inner boundary, front to back.</param>
/// <param name="Outer">Sections on the outer boundary, front to back.</param>
public sealed record StepSections(int Step, Line2 Front, Line2 Back, Vector2 Up, ImmutableArray<Section> Inner, ImmutableArray<Section> Outer)
{
    /// <summary>The rounded end it has on the inner side; null where it ends square.</summary>
    public RoundedEnd? InnerEnd { get; init; }

    /// <summary>The rounded end it has on the outer side.</summary>
    public RoundedEnd? OuterEnd { get; init; }
}
