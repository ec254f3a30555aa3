namespace Rodwright.Workshop.Starts;

/// <summary>What kind of stair a new job begins as.</summary>
public enum BlankKind
{
    /// <summary>A straight flight.</summary>
    Straight,

    /// <summary>A turn of three tapered steps near the foot.</summary>
    TurnLow,

    /// <summary>A turn of three tapered steps near the head.</summary>
    TurnHigh,

    /// <summary>A quarter landing half way up.</summary>
    Landing,
}
