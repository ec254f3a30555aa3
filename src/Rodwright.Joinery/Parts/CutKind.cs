namespace Rodwright.Joinery.Parts;

/// <summary>What a cut is; each kind has its own machining layer.</summary>
public enum CutKind
{
    /// <summary>Recess for the end of a tread, riser or nosing piece, with its wedge space.</summary>
    Housing,

    /// <summary>Recess for the end of a string at the corner of the room.</summary>
    CornerHousing,

    /// <summary>Socket for a dovetail at the corner of the room, seen from the lower string's end: it spreads behind the face.</summary>
    Dovetail,

    /// <summary>Deep recess for a tenon.</summary>
    Mortice,

    /// <summary>Shallow recess between twin mortices for the haunch.</summary>
    Haunch,

    /// <summary>Wood taken off the face side to leave a bare-faced tenon.</summary>
    TenonCheek,

    /// <summary>Wood taken off one side of a rail's end to leave a central tenon.</summary>
    Cheek,

    /// <summary>Groove along a rail for balusters and the fillets between them.</summary>
    Groove,

    /// <summary>Recess in the underside of a cap for the newel's head.</summary>
    Recess,

    /// <summary>Round hole for a draw-bore peg.</summary>
    Bore,

    /// <summary>Wood taken away so that a piece passes another, a trimmer for example.</summary>
    Notch,

    /// <summary>Half of a newel split off down its middle, from head to foot.</summary>
    Split,

    /// <summary>Edge rounded along a line: the shape is that line, the depth the radius.</summary>
    RoundedEdge,
}
