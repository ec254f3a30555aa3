using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs;

/// <summary>What was measured in the house.</summary>
public sealed record Survey
{
    /// <summary>Finished floor to finished floor, one or several readings, mm.</summary>
    public required ImmutableArray<double> FloorToFloor { get; init; }

    /// <summary>How far readings of one thing may lie apart, mm; default 5 (common practice). Beyond it the job is refused, never averaged in silence.</summary>
    public double Tolerance { get; init; } = 5;

    /// <summary>The height worked to: the mean of the readings, mm.</summary>
    public double Height => FloorToFloor.Average();

    /// <summary>Largest reading less smallest, mm.</summary>
    public double Spread => FloorToFloor.Max() - FloorToFloor.Min();

    /// <summary>Equal when readings and tolerance are: an array alone would be compared by identity.</summary>
    public bool Equals(Survey? other) => other is not null && Tolerance.Equals(other.Tolerance) && FloorToFloor.SequenceEqual(other.FloorToFloor);

    /// <inheritdoc/>
    public override int GetHashCode() => FloorToFloor.Aggregate(Tolerance.GetHashCode(), HashCode.Combine);
}
