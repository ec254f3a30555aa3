namespace Rodwright.Stairs.Proposals;

/// <summary>One thing that may stand against a layout.</summary>
public enum Bound
{
    /// <summary>The rise, by the regulation.</summary>
    Rise,

    /// <summary>The going of the straight steps.</summary>
    Going,

    /// <summary>The pitch of the straight steps.</summary>
    Pitch,

    /// <summary>Twice the rise and the going.</summary>
    TwoRiseAndGoing,

    /// <summary>Risers from landing to landing.</summary>
    RisersPerFlight,

    /// <summary>Height from landing to landing.</summary>
    FlightRise,

    /// <summary>Risers without a change of direction.</summary>
    StraightRun,

    /// <summary>Clear width.</summary>
    ClearWidth,

    /// <summary>Length of a landing.</summary>
    Landing,

    /// <summary>Narrow ends of tapered steps at the newel.</summary>
    Narrow,

    /// <summary>Going of tapered steps on the walking line.</summary>
    TaperedGoing,

    /// <summary>The longest going of tapered steps.</summary>
    LongestGoing,

    /// <summary>Pitch of tapered steps.</summary>
    TaperedPitch,

    /// <summary>How far a newel stands proud of its strings.</summary>
    Proud,

    /// <summary>Width of the strings' boards under straight steps.</summary>
    StringWidth,

    /// <summary>String between two newels.</summary>
    Shoulders,

    /// <summary>Length of the room along the wall the stair begins at.</summary>
    RoomLength,

    /// <summary>Width of the room out from that wall.</summary>
    RoomWidth,

    /// <summary>Length of the well: headroom under its edge.</summary>
    WellLength,

    /// <summary>Width of the well.</summary>
    WellWidth,

    /// <summary>Something that only the whole stair shows.</summary>
    WholeStair,
}
