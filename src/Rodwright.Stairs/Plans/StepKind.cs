namespace Rodwright.Stairs.Plans;

/// <summary>How a step is held up.</summary>
public enum StepKind
{
    /// <summary>Housed in strings and newels, its riser faces parallel.</summary>
    Straight,

    /// <summary>Housed in strings and newels, its riser faces not parallel.</summary>
    Tapered,

    /// <summary>A landing: boards on joists; only its nosing piece is the stair's.</summary>
    Landing,

    /// <summary>The upper floor; only its nosing piece is the stair's.</summary>
    Floor,
}
