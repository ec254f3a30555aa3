using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Joinery.Parts;

/// <summary>
/// One piece of the stair. Drawing, ordinates, machining layers, list, solid and proof are all derived from this one description.
/// </summary>
public sealed record Part
{
    /// <summary>Stable id, for example tread-4.</summary>
    public required string Id { get; init; }

    /// <summary>What it is called, for example "tread 4".</summary>
    public required string Name { get; init; }

    /// <summary>Its mark, pencilled on the piece: T4.</summary>
    public required string Mark { get; init; }

    /// <summary>What it is.</summary>
    public required PartKind Kind { get; init; }

    /// <summary>Timber or sheet material, as on the list.</summary>
    public required string Material { get; init; }

    /// <summary>What it is made from.</summary>
    public required Blank Blank { get; init; }

    /// <summary>Worked faces; the first is the face side (a newel has its four, S E N W).</summary>
    public required ImmutableArray<PartFace> Faces { get; init; }

    /// <summary>Cuts in its faces.</summary>
    public ImmutableArray<Cut> Cuts { get; init; } = [];

    /// <summary>The step it belongs to; 0 for none.</summary>
    public int Step { get; init; }

    /// <summary>The face side.</summary>
    public PartFace FaceSide => Faces[0];

    /// <summary>The part mirrored in the world's plane x = 0: for a right-hand stair.</summary>
    public Part Mirrored()
    {
        var width = Kind == PartKind.Newel ? Blank.Width : 0;
        var faces = Faces.Select(f => f.Mirrored(width)).ToList();
        var cuts = Cuts.Select(c => c.Mirrored(width)).ToList();
        if (Kind == PartKind.Newel)
        {
            // The mirror changes E and W; keep the order S E N W, and the cuts with their faces.
            (faces[1], faces[3]) = (faces[3], faces[1]);
            cuts = [.. cuts.Select(c => c with { Face = c.Face switch { 1 => 3, 3 => 1, _ => c.Face } })];
        }
        return this with { Blank = Blank.Mirrored(width), Faces = [.. faces], Cuts = [.. cuts] };
    }
}
