namespace Rodwright.Stairs.Surveys;

/// <summary>Where the stair stands in the room.</summary>
public sealed record StairPlace
{
    /// <summary>Number of the wall its first outer string stands against, counted from 1.</summary>
    public int Wall { get; init; } = 1;

    /// <summary>From the beginning of that wall to the first riser's face, mm; null lets the stair stand in the far corner, or under the well (<see cref="RoomFrame"/>).</summary>
    public double? From { get; init; }

    /// <summary>Between the back of that string and the wall, mm.</summary>
    public double Gap { get; init; }
}
