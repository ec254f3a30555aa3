namespace Rodwright.Stairs.Plans;

/// <summary>What a piece of a boundary is, and so how a step ends there.</summary>
public enum BoundaryKind
{
    /// <summary>Face of a string: treads and risers are housed and wedged in it.</summary>
    StringFace,

    /// <summary>Face of a newel that takes tread and riser ends, without wedge space.</summary>
    NewelFace,

    /// <summary>The jog from a string's face round to a newel's face, on the newel face that takes the string: treads are notched and butt there.</summary>
    NewelJog,

    /// <summary>The line in which a rounded bottom step leaves the stair's width, in front of its newel: nothing stands there.</summary>
    FreeEnd,

    /// <summary>Face of the wall, in line with the string, that a half newel stands against: beyond the newel steps butt there.</summary>
    WallEnd,

    /// <summary>Wall beside a landing: nothing of the stair is housed in it.</summary>
    Wall,
}
