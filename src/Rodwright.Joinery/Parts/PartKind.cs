namespace Rodwright.Joinery.Parts;

/// <summary>What a piece is in the stair.</summary>
public enum PartKind
{
    /// <summary>String against a wall.</summary>
    WallString,

    /// <summary>String between newels.</summary>
    NewelString,

    /// <summary>Post at an end or a corner.</summary>
    Newel,

    /// <summary>Tread with parallel edges.</summary>
    Tread,

    /// <summary>Tread of a tapered step.</summary>
    TaperedTread,

    /// <summary>Riser square to its strings.</summary>
    Riser,

    /// <summary>Riser that meets its strings at a slant.</summary>
    TaperedRiser,

    /// <summary>Nosing piece of a landing or of the upper floor.</summary>
    NosingPiece,
}
