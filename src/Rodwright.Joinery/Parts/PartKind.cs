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

    /// <summary>First riser of a rounded bottom step, thinned to a veneer and bent round its block: its face looks up, its blank is the board before it is bent.</summary>
    BentRiser,

    /// <summary>Built-up block of a rounded bottom step.</summary>
    Block,

    /// <summary>Handrail between newels; its face is its side, seen from the stair.</summary>
    Handrail,

    /// <summary>Base rail, or capping, that balusters stand in.</summary>
    BaseRail,

    /// <summary>Square baluster.</summary>
    Baluster,

    /// <summary>Fillet in a rail's groove between two balusters.</summary>
    Fillet,

    /// <summary>Cap of a newel.</summary>
    NewelCap,

    /// <summary>Half newel against a wall on the upper floor, where a landing's balustrade ends.</summary>
    WallNewel,

    /// <summary>Handrail on brackets along a wall.</summary>
    WallRail,

    /// <summary>Bracket under a wall rail: a block from the wall to the rail.</summary>
    Bracket,

    /// <summary>Nosing along the open edge of a landing, under its base rail; its face side is its top.</summary>
    LandingNosing,

    /// <summary>Apron lining below a landing nosing, seen from the well.</summary>
    Apron,

    /// <summary>Wedge driven under a tread or behind a riser, seen on the string's face.</summary>
    Wedge,

    /// <summary>Glue block rubbed into the corner of tread and riser, seen from its end.</summary>
    GlueBlock,

    /// <summary>Draw-bore peg, seen from its end.</summary>
    Peg,

    /// <summary>Rough string under a wide flight, seen from its side.</summary>
    Carriage,

    /// <summary>Bracket on the side of a carriage, tight under a tread.</summary>
    CarriageBracket,

    /// <summary>Pair of folding wedges that draws the bent riser tight round its block.</summary>
    Wedges,
}
