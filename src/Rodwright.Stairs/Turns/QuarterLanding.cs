namespace Rodwright.Stairs.Turns;

/// <summary>A quarter landing: one step whose two riser faces are square to the flights (setting-out.md 2.2, method 4).</summary>
public sealed class QuarterLanding : TurnMethod
{
    private QuarterLanding() { }

    /// <summary>The one instance.</summary>
    public static QuarterLanding Instance { get; } = new();

    /// <inheritdoc/>
    public override string Id => "quarter-landing";

    /// <inheritdoc/>
    public override string Title => "a square landing, its risers square to the flights";

    /// <inheritdoc/>
    public override IReadOnlyList<TurnLine> Lines(TurnSite site, double firstRiser, double lastRiser, int steps) =>
        [First(site, firstRiser), Last(site, lastRiser)];
}
