using System.Collections.Immutable;

namespace Rodwright.Stairs.Turns;

/// <summary>Every way of setting out a turn. A new one is a new file and a line here.</summary>
public static class TurnCatalogue
{
    /// <summary>Methods for tapered steps, the default first.</summary>
    public static ImmutableArray<TurnMethod> Winders { get; } = [EqualGoings.ByChord, EqualGoings.ByArc, Radiating.Instance];

    /// <summary>Every method, landings included.</summary>
    public static ImmutableArray<TurnMethod> All { get; } = [.. Winders, QuarterLanding.Instance];

    /// <summary>The method with an id; null when there is none.</summary>
    public static TurnMethod? Find(string id) => All.FirstOrDefault(m => m.Id == id);
}
