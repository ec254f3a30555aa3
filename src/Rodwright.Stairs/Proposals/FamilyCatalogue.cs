using System.Collections.Immutable;
using Rodwright.Stairs.Proposals.Families;

namespace Rodwright.Stairs.Proposals;

/// <summary>Every family of layouts that is tried. A new one is a new file and a line here.</summary>
public static class FamilyCatalogue
{
    /// <summary>The families, simplest first.</summary>
    public static ImmutableArray<Family> All { get; } =
    [
        StraightFlight.Family,
        QuarterLow.Family,
        QuarterMiddle.Family,
        QuarterHigh.Family,
        QuarterWithLanding.Family,
        QuarterBalanced.Family,
        TwoQuarters.Family,
        WindersThenLanding.Family,
        DoubleKite.Family,
        DogLeg.Family,
        OpenWell.Family,
        ThreeFlights.Family,
        LeftThenRight.Family,
    ];

    /// <summary>Their ids.</summary>
    public static ImmutableArray<string> Ids { get; } = [.. All.Select(f => f.Id)];

    /// <summary>The family with an id; null when there is none.</summary>
    public static Family? Find(string id) => All.FirstOrDefault(f => f.Id == id);
}
