namespace Rodwright.Workshop.Choosing;

/// <summary>What the wall is sorted by; the better comes first.</summary>
public enum WallOrder
{
    /// <summary>The sum of the ranking.</summary>
    Rank,

    /// <summary>How near twice the rise and the going is to its ideal.</summary>
    Comfort,

    /// <summary>The pitch, the gentlest first.</summary>
    Pitch,

    /// <summary>The least headroom, the most first; not measured counts as the most.</summary>
    Headroom,

    /// <summary>The floor taken, the least first.</summary>
    FloorArea,

    /// <summary>The narrowest end, the widest first; no tapered step counts as the widest.</summary>
    Narrowest,

    /// <summary>The timber, the least first.</summary>
    Timber,

    /// <summary>How many steps taper, the fewest first.</summary>
    TaperedSteps,
}
