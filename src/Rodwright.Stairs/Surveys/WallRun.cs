namespace Rodwright.Stairs.Surveys;

/// <summary>One wall of the room, from corner to corner. Walls are listed in the order in which they are met climbing beside them; the first begins at the room's datum corner.</summary>
public sealed record WallRun
{
    /// <summary>What it is called on sheets; empty for "wall 1".</summary>
    public string Name { get; init; } = "";

    /// <summary>Length at the height of the string, mm.</summary>
    public Readings Length { get; init; } = Readings.None;

    /// <summary>The corner at its far end; null when it was not measured, and then taken as square.</summary>
    public CornerReading? Corner { get; init; }

    /// <summary>Out of plumb; null when it was not measured, and then taken as plumb.</summary>
    public PlumbReading? Plumb { get; init; }

    /// <summary>Doors and windows in it.</summary>
    public ListOf<WallOpening> Openings { get; init; } = [];
}

/// <summary>How far a wall is out of plumb.</summary>
/// <param name="Out">How far it leans into the room, over the height; negative when it leans away, mm.</param>
/// <param name="Over">The height over which that was measured, mm.</param>
public sealed record PlumbReading(double Out, double Over)
{
    /// <summary>Lean into the room per mm of height.</summary>
    public double Slope => Out / Over;
}
