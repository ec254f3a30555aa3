using System.Collections.Immutable;

namespace Rodwright.Stairs.Rules;

/// <summary>Every rule. A new one is a new file and a line here.</summary>
public static class RuleCatalogue
{
    /// <summary>The rules that are measured.</summary>
    public static ImmutableArray<Rule> Measured { get; } =
    [
        RiseRule.Instance, GoingRule.Instance, PitchRule.Instance, TaperedPitchRule.Instance, TwoRiseAndGoingRule.Instance,
        UniformRiseRule.Instance, UniformGoingRule.Instance, TaperedGoingRule.Instance, OuterGoingRule.Instance, UniformTaperedGoingRule.Instance,
        NarrowAlongFacesRule.Instance, NarrowStraightRule.Instance, NarrowTreadWidthRule.Instance, GreatestGoingRule.Instance,
        NosingRule.Instance, RisersPerFlightRule.Instance, FlightRiseRule.Instance, StraightRunRule.Instance, ClearWidthRule.Instance, LandingRule.Instance,
        HeadroomRule.Instance, HeadroomMiddleRule.Instance, HeadroomSideRule.Instance,
        FirstRiseRule.Instance, TaperedPerQuarterRule.Instance, WalkingBendRule.Instance, TaperReachRule.Instance,
        HandrailHeightRule.Instance, HandrailSidesRule.Instance, OuterHandrailRule.Instance, GuardingHeightRule.Instance, LandingGuardingRule.Instance, GuardingGapRule.Instance, LandingGapRule.Instance,
    ];

    /// <summary>What regulations ask for and this version does not measure.</summary>
    public static ImmutableArray<Rule> Unmeasured { get; } =
    [
        Unmeasureds.EndLandings, Unmeasureds.Doors, Unmeasureds.EscapeWidth,
        Unmeasureds.Lighting, Unmeasureds.NosingEdge, Unmeasureds.LevelTreads, Unmeasureds.External, Unmeasureds.CategoryGoing, Unmeasureds.Winders,
        Unmeasureds.Fixings, Unmeasureds.ControlSums, Unmeasureds.FlightWidth,
    ];

    /// <summary>The rule with an id; null when there is none.</summary>
    public static Rule? Find(string id) => Measured.Concat(Unmeasured).FirstOrDefault(r => r.Id == id);
}
