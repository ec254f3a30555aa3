namespace Rodwright.Stairs.Jobs;

/// <summary>What an open side's string ends in at the foot and at the head of the stair.</summary>
/// <param name="Foot">At the foot.</param>
/// <param name="Head">At the upper floor.</param>
public sealed record Ends(EndNewel Foot, EndNewel Head)
{
    /// <summary>A newel at both.</summary>
    public static Ends Usual { get; } = new(EndNewel.Newel, EndNewel.Newel);
}

/// <summary>The newel at an end of the stair.</summary>
public enum EndNewel
{
    /// <summary>A whole newel, the riser's face on its centre.</summary>
    Newel,

    /// <summary>Half a newel, split down its middle, its back in the plane of the riser's face against the end of a wall in line with the string.</summary>
    HalfNewel,
}
