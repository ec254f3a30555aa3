namespace Rodwright.Rod.Board;

/// <summary>What a piece of the rod on the board shows.</summary>
public enum BoardPieceKind
{
    /// <summary>The stair in plan.</summary>
    Plan,

    /// <summary>A wall string, or the two of a corner, in development.</summary>
    WallString,

    /// <summary>A newel string in development.</summary>
    NewelString,

    /// <summary>A newel's four faces, whole.</summary>
    Newel,

    /// <summary>The tread of a tapered step on its board.</summary>
    TaperedStep,

    /// <summary>A rail with what stands under it, seen from the stair.</summary>
    Balustrade,
}
