using System.Collections.Immutable;

namespace Rodwright.Stairs.Turns;

/// <summary>Every way of setting out a turn. A new one is a new file and a line here.</summary>
public static class TurnCatalogue
{
    /// <summary>Methods for tapered steps, the default first.</summary>
    public static ImmutableArray<TurnMethod> Winders { get; } =
    [
        EqualGoings.ByChord, EqualGoings.ByArc, Radiating.Instance,
        new Balanced("balanced-progression", "balanced: each step narrower by one more unit than the one before", new Progression()),
        new Balanced("balanced-scale", "balanced: narrow ends on a straight scale that ends with the narrow end at the turn", new BalancingScale()),
        new Balanced("balanced-harrow", "balanced: narrow ends cut by the rays of a harrow", new Harrow()),
        new Balanced("balanced-angle", "balanced: goings on a slanting line projected on to the narrow line", new AngleProjection()),
        new Balanced("balanced-equal", "balanced: goings and narrow line each in equal parts", new EqualDivision()),
    ];

    /// <summary>Every method, landings included.</summary>
    public static ImmutableArray<TurnMethod> All { get; } = [.. Winders, QuarterLanding.Instance, QuarterLanding.Half];

    /// <summary>The method with an id; null when there is none.</summary>
    public static TurnMethod? Find(string id) => All.FirstOrDefault(m => m.Id == id);
}
