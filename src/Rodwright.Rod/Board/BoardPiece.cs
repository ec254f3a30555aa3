using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Rod.Board;

/// <summary>One drawing of the rod, in coordinates of its own, so that it stays the same text wherever on the board it lies.</summary>
public sealed record BoardPiece
{
    /// <summary>"plan", or the id of the part; of the lower one where two strings are drawn together. Also the subject of the piece's stages.</summary>
    public required string Id { get; init; }

    /// <summary>Its name in bench words.</summary>
    public required string Title { get; init; }

    /// <summary>What it shows.</summary>
    public required BoardPieceKind Kind { get; init; }

    /// <summary>Ids of the parts drawn on it for their own sake; for the plan, of the whole stair.</summary>
    public required ImmutableArray<string> Things { get; init; }

    /// <summary>Where it lies, mm of the board, y up.</summary>
    public required Box2 Place { get; init; }

    /// <summary>Frames of the stair drawn on it: one, but for a newel one for each face, S E N W.</summary>
    public required ImmutableArray<BoardFrame> Frames { get; init; }

    /// <summary>The finished drawing: mm of paper from the bottom left corner of <see cref="Place"/>, y up.</summary>
    public required ImmutableArray<Mark> Marks { get; init; }

    /// <summary>The lines it is drawn by, in order, in the same coordinates.</summary>
    public required ImmutableArray<BoardLine> Lines { get; init; }
}
