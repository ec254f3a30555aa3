namespace Rodwright.Stairs.Turns;

/// <summary>A landing: one step whose two riser faces are square to the flights (setting-out.md 2.2, method 4). It fills a quarter or a half of a turn.</summary>
public sealed class QuarterLanding : TurnMethod
{
    private QuarterLanding(string id, string title) => (Id, Title) = (id, title);

    /// <summary>Filling a quarter turn.</summary>
    public static QuarterLanding Instance { get; } = new("quarter-landing", "a square landing, its risers square to the flights");

    /// <summary>Filling a half turn.</summary>
    public static QuarterLanding Half { get; } = new("half-landing", "a landing across both flights, its risers square to them");

    /// <inheritdoc/>
    public override string Id { get; }

    /// <inheritdoc/>
    public override string Title { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TurnLine> Lines(TurnSite site, TurnSetting setting) =>
        [First(site, setting.FirstRiser), Last(site, setting.LastRiser)];
}
