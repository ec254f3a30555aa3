namespace Rodwright.Stairs.Jobs;

/// <summary>How much each measure counts when proposals are ranked: each is the price of one unit as the ranking counts it; 0 leaves a measure out.</summary>
public sealed record RankingWeights
{
    /// <summary>For every 60 mm that twice the rise and the going together lie off their ideal; default 3.</summary>
    public double Comfort { get; init; } = 3;

    /// <summary>For every 10 degrees of pitch above 30; default 1.</summary>
    public double Pitch { get; init; } = 1;

    /// <summary>For 300 mm of headroom short of 300 more than the regulation asks; default 0.5.</summary>
    public double Headroom { get; init; } = 0.5;

    /// <summary>For every 2 square metres of floor; default 0.5.</summary>
    public double FloorArea { get; init; } = 0.5;

    /// <summary>For 100 mm of narrow end short of 100 (nothing where no step tapers); default 0.5.</summary>
    public double Narrowest { get; init; } = 0.5;

    /// <summary>For every tenth of a cubic metre of timber; default 0.5.</summary>
    public double Timber { get; init; } = 0.5;

    /// <summary>For every tapered step; default 0.1.</summary>
    public double TaperedSteps { get; init; } = 0.1;
}
