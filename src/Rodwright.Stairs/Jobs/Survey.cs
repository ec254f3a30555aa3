using System.Collections.Immutable;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Jobs;

/// <summary>What was measured in the house.</summary>
public sealed record Survey
{
    /// <summary>Floor to floor as the floors were when it was measured, one or several readings, mm.</summary>
    public required ImmutableArray<double> FloorToFloor { get; init; }

    /// <summary>How far readings of one thing may lie apart, mm; default 5 (common practice). Beyond it the job is refused, never averaged in silence.</summary>
    public double Tolerance { get; init; } = 5;

    /// <summary>Screed, boards or tiles still to come on the lower floor, mm; negative for what will be taken up. Takes from the height.</summary>
    public double LowerFinish { get; init; }

    /// <summary>The same on the upper floor. Adds to the height.</summary>
    public double UpperFinish { get; init; }

    /// <summary>Walls of the room, in the order in which they are met climbing beside them; empty when they were not measured.</summary>
    public ListOf<WallRun> Walls { get; init; } = [];

    /// <summary>The opening in the upper floor; null when it was not measured.</summary>
    public Well? Well { get; init; }

    /// <summary>Sloping ceilings.</summary>
    public ListOf<SlopingCeiling> Ceilings { get; init; } = [];

    /// <summary>Doors and turns on the way in.</summary>
    public ListOf<WayInStop> WayIn { get; init; } = [];

    /// <summary>Where the stair stands.</summary>
    public StairPlace Place { get; init; } = new();

    /// <summary>How far readings may be off.</summary>
    public SurveyAccuracy Accuracy { get; init; } = new();

    /// <summary>The height worked to: the mean of the readings from finished floor to finished floor, mm.</summary>
    public double Height => FloorToFloor.Average() + UpperFinish - LowerFinish;

    /// <summary>Largest reading less smallest, mm.</summary>
    public double Spread => FloorToFloor.Max() - FloorToFloor.Min();

    /// <summary>Whether anything over the stair was measured.</summary>
    public bool HasOverhead => Well is not null || Ceilings.Count > 0;

    /// <summary>Whether anything beyond the height was measured.</summary>
    public bool HasRoom => HasOverhead || Walls.Count > 0 || WayIn.Count > 0;

    /// <summary>Equal when all of it is: an array alone would be compared by identity.</summary>
    public bool Equals(Survey? other) => other is not null && Tolerance.Equals(other.Tolerance) && FloorToFloor.SequenceEqual(other.FloorToFloor)
        && LowerFinish.Equals(other.LowerFinish) && UpperFinish.Equals(other.UpperFinish) && Walls == other.Walls && Well == other.Well
        && Ceilings == other.Ceilings && WayIn == other.WayIn && Place == other.Place && Accuracy == other.Accuracy;

    /// <inheritdoc/>
    public override int GetHashCode() => FloorToFloor.Aggregate(HashCode.Combine(Tolerance, LowerFinish, UpperFinish), HashCode.Combine);
}
