namespace Rodwright.Joinery.Joints;

/// <summary>How two pieces meet.</summary>
public enum JointKind
{
    /// <summary>End of a tread or nosing piece housed in a string or newel.</summary>
    TreadHousing,

    /// <summary>End of a riser housed in a string or newel.</summary>
    RiserHousing,

    /// <summary>String tenoned into a newel, draw-bored.</summary>
    Tenon,

    /// <summary>Upper wall string let into the lower one at the corner of the room.</summary>
    Corner,

    /// <summary>Riser's face against the back of the tread below it, glued and screwed.</summary>
    RiserToTread,

    /// <summary>Bent riser glued round its block, screwed behind the wedges.</summary>
    BlockToRiser,

    /// <summary>Block of a rounded step screwed to the newel's face.</summary>
    BlockToNewel,

    /// <summary>Folding wedges driven between the block and the riser's full thickness.</summary>
    WedgesInSlot,

    /// <summary>Handrail tenoned into a newel, draw-bored.</summary>
    RailTenon,

    /// <summary>Base rail on the upper edge of its string, glued and screwed.</summary>
    RailOnString,

    /// <summary>End of a handrail, base rail or baluster scribed to the lower edge of the string of a flight above, glued and screwed.</summary>
    UnderString,

    /// <summary>Base rail of a landing on its nosing.</summary>
    RailOnNosing,

    /// <summary>Landing nosing on the top edge of its apron lining.</summary>
    NosingOnApron,

    /// <summary>Two nosings, or two apron linings, in a corner of the well: mitred, or one butted against the other's face.</summary>
    EdgeCorner,

    /// <summary>End of a base rail against a newel's face.</summary>
    RailToNewel,

    /// <summary>End of a baluster, or a fillet, in a rail's groove.</summary>
    InGroove,

    /// <summary>Newel's head in the recess of its cap.</summary>
    CapOnNewel,

    /// <summary>Bracket under a wall rail, screwed up into it.</summary>
    BracketToRail,

    /// <summary>Wedge driven home in its housing.</summary>
    WedgeDriven,

    /// <summary>Glue block rubbed against a tread or a riser.</summary>
    Rubbed,

    /// <summary>Peg in its bore.</summary>
    PegInBore,

    /// <summary>Bracket against the side of its carriage.</summary>
    BracketToCarriage,

    /// <summary>Tread's underside on a bracket's top.</summary>
    BracketUnderTread,

    /// <summary>Riser's lower edge on the carriage.</summary>
    CarriageUnderRiser,

    /// <summary>Tread's (or nosing piece's) underside on the top edge of its riser.</summary>
    TreadOnRiser,
}
