namespace Rodwright.Stairs.Jobs;

/// <summary>Which way a stair turns, going up; for a straight flight, which side is open.</summary>
public enum Hand
{
    /// <summary>Turns to the left going up.</summary>
    Left,

    /// <summary>Turns to the right going up: the mirror image of the left-hand stair.</summary>
    Right,
}
