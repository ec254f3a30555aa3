namespace Rodwright.Stairs.Jobs;

/// <summary>The cap on a newel: a square piece with a recess in its underside that takes the newel's head.</summary>
public sealed record NewelCap
{
    /// <summary>Its shape; default a pyramid.</summary>
    public CapShape Shape { get; init; } = CapShape.Pyramid;

    /// <summary>Height of its square edge, mm; default 25 (common practice).</summary>
    public double Edge { get; init; } = 25;

    /// <summary>Height of the pyramid above the edge, mm; default 20 (common practice).</summary>
    public double Rise { get; init; } = 20;

    /// <summary>How far it stands over the newel on each side, mm; default 10 (common practice).</summary>
    public double Overhang { get; init; } = 10;

    /// <summary>Depth of the recess for the newel's head, mm; default 8 (common practice).</summary>
    public double Recess { get; init; } = 8;
}

/// <summary>Shape of a newel's cap.</summary>
public enum CapShape
{
    /// <summary>None: the head is finished on the newel itself.</summary>
    None,

    /// <summary>A flat square.</summary>
    Flat,

    /// <summary>A flat pyramid on a square edge.</summary>
    Pyramid,
}
