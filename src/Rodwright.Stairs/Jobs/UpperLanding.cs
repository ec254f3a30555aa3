namespace Rodwright.Stairs.Jobs;

/// <summary>The balustrade along the open edge of the upper floor, from the top newel to half a newel against a wall.</summary>
public sealed record UpperLanding
{
    /// <summary>From the top newel's centre to the wall, mm; null where there is none.</summary>
    public double? Length { get; init; }

    /// <summary>Which way it runs.</summary>
    public LandingWay Way { get; init; } = LandingWay.Away;
}

/// <summary>Which way a balustrade runs from the top newel.</summary>
public enum LandingWay
{
    /// <summary>Square to the flight, away from its steps.</summary>
    Away,

    /// <summary>Straight on, in the flight's own direction.</summary>
    On,
}
