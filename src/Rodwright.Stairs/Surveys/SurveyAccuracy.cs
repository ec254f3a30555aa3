namespace Rodwright.Stairs.Surveys;

/// <summary>How far a reading may be from the truth either way. Defaults are common practice with a tape and a level; not from any document.</summary>
public sealed record SurveyAccuracy
{
    /// <summary>Floor to floor, mm; default 2.</summary>
    public double FloorToFloor { get; init; } = 2;

    /// <summary>What is still to come on a floor, mm; default 1. Nothing where nothing is to come.</summary>
    public double Finish { get; init; } = 1;

    /// <summary>Lengths of walls, mm; default 3.</summary>
    public double Walls { get; init; } = 3;

    /// <summary>A corner read in degrees; default 0.3.</summary>
    public double Corner { get; init; } = 0.3;

    /// <summary>The distance across two legs, or a diagonal, mm; default 1.</summary>
    public double Across { get; init; } = 1;

    /// <summary>Out of plumb, mm; default 2.</summary>
    public double Plumb { get; init; } = 2;

    /// <summary>Length, width and corners of the well, mm; default 3.</summary>
    public double Well { get; init; } = 3;

    /// <summary>Depth of the trimmer, mm; default 2.</summary>
    public double Trimmer { get; init; } = 2;

    /// <summary>Heights of ceilings, mm; default 3.</summary>
    public double Ceiling { get; init; } = 3;

    /// <summary>A pitch read in degrees; default 0.5.</summary>
    public double Pitch { get; init; } = 0.5;
}
