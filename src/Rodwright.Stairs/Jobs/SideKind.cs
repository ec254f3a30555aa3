namespace Rodwright.Stairs.Jobs;

/// <summary>What stands beside a stair.</summary>
public enum SideKind
{
    /// <summary>A wall: the string is fixed to it, and no newels stand there but a turn's.</summary>
    Wall,

    /// <summary>Nothing: a newel string between newels.</summary>
    Open,
}
