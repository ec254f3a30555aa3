namespace Rodwright.Stairs.Balustrades;

/// <summary>Where a handrail runs.</summary>
public enum RailKind
{
    /// <summary>On the open side of a flight, between newels, parallel to its margin line.</summary>
    Flight,

    /// <summary>Level, along the open edge of a landing or of the upper floor.</summary>
    Landing,

    /// <summary>On brackets along a wall.</summary>
    Wall,
}
