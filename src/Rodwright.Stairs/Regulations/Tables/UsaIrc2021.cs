using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>United States, International Residential Code, 2021 edition (standards.md 6). Its lengths are inches, kept exactly.</summary>
internal static class UsaIrc2021
{
    private const double Inch = 25.4;

    public static Regulation Table { get; } = new()
    {
        Id = "usa-irc-2021",
        Title = "United States, International Residential Code, 2021 edition",
        Group = "United States",
        Units = Geometry.Units.Inches,
        WalkingLine = new(0, 12 * Inch, false),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.Straight,
        LeastNarrow = 6 * Inch,
        TaperedAtLeastStraight = false,
        LeastGoing = 10 * Inch,
        Measures = "The narrow end is limited straight across, as the least tread depth anywhere in the clear width. The going of a winder is the chord between the nosings' crossings with the walkline.",
        Standing = "Mandatory where adopted; states amend its numbers.",
        Clauses =
        [
            new("R311.7.5.1", RiseRule.Instance, Limit.AtMost(7.75 * Inch, "7¾ in"), TextSeen, "riser height at most 7¾ in", Weight.Limit),
            new("R311.7.5.1", UniformRiseRule.Instance, Limit.AtMost(0.375 * Inch, "3/8 in"), TextSeen, "shall not exceed the smallest by more than 3/8 inch", Weight.Limit),
            new("R311.7.5.2", GoingRule.Instance, Limit.AtLeast(10 * Inch, "10 in"), TextSeen, "tread depth at least 10 in, nosing to nosing", Weight.Limit),
            new("R311.7.5.2", UniformGoingRule.Instance, Limit.AtMost(0.375 * Inch, "3/8 in"), TextSeen, "shall not exceed the smallest by more than 3/8 inch", Weight.Limit),
            new("R311.7.4, R311.7.5.2.1", TaperedGoingRule.Instance, Limit.AtLeast(10 * Inch, "10 in"), TextSeen, "winder tread depth at least 10 in on the walkline, 12 in from the inside of the turn", Weight.Limit),
            new("R311.7.5.2.1", NarrowStraightRule.Instance, Limit.AtLeast(6 * Inch, "6 in"), TextSeen, "at any point within the clear width of the stair", Weight.Limit),
            new("R311.7.5.2.1", NarrowAlongFacesRule.Instance, Limit.None, TextSeen, "the other way of measuring a narrow end", Weight.Advice),
            new("R311.7.5.2.1", NarrowTreadWidthRule.Instance, Limit.None, TextSeen, "the other way of measuring a narrow end", Weight.Advice),
            new("R311.7.5.2.1", UniformTaperedGoingRule.Instance, Limit.AtMost(0.375 * Inch, "3/8 in"), TextSeen, "winders within 3/8 in of each other on the walkline; they need not match straight treads", Weight.Limit),
            new("R311.7.5.3", NosingRule.Instance, Limit.Between(0.75 * Inch, 1.25 * Inch, "¾ to 1¼ in"), TextSeen, "nosing projection ¾ to 1¼ in", Weight.Limit) { Except = DeepTreads },
            new("R311.7.3", FlightRiseRule.Instance, Limit.AtMost(151 * Inch, "12 ft 7 in"), TextSeen, "a flight climbs at most 12 ft 7 in", Weight.Limit),
            new("R311.7.1", ClearWidthRule.Instance, Limit.AtLeast(36 * Inch, "36 in"), TextSeen, "clear width at least 36 in above the handrail", Weight.Limit),
            new("R311.7.6", LandingRule.Instance, Limit.AtLeastClearWidth, TextSeen, "landing at least as wide as the flight", Weight.Limit),
            new("R311.7.6", LandingRule.Instance, Limit.AtLeast(36 * Inch, "36 in"), TextSeen, "depth in the direction of travel at least 36 in", Weight.Limit),
            new("R311.7.2", HeadroomRule.Instance, Limit.AtLeast(80 * Inch, "6 ft 8 in"), TextSeen, "6 ft 8 in from the sloped line of the nosings", Weight.Limit),
            NotChecked("R311.7.1", Unmeasureds.EscapeWidth, TextSeen, "31½ in below one handrail, 27 in between two"),
            NotChecked("R311.7.5.3", Unmeasureds.NosingEdge, TextSeen, "radius at most 9/16 in, bevel at most ½ in"),
            NotChecked("R311.7.6", Unmeasureds.EndLandings, TextSeen, "a floor or landing at top and bottom"),
            NotChecked("R311.7.7", Unmeasureds.LevelTreads, TextSeen, "treads and landings slope at most 1 in 48"),
            new("R311.7.8", HandrailHeightRule.Instance, Limit.Between(34 * Inch, 38 * Inch, "34 to 38 in"), TextSeen, "one side from 4 risers on; 34 to 38 in high", Weight.Limit),
            new("R311.7.8", HandrailSidesRule.Instance, Limit.AtLeast(1), TextSeen, "at least one side, from 4 risers on", Weight.Limit)
            {
                Except = plan => plan.Risers < 4 ? "fewer than 4 risers" : null,
            },
            NotChecked("R311.7.9", Unmeasureds.Lighting, TextSeen, "stairways are lit"),
            new("R312.1", GuardingHeightRule.Instance, Limit.AtLeast(34 * Inch, "34 in"), TextSeen, "where the drop is more than 30 in; no 4 in sphere through", Weight.Limit),
            new("R312.1.2", LandingGuardingRule.Instance, Limit.AtLeast(36 * Inch, "36 in"), TextSeen, "36 in on landings and floors", Weight.Limit),
            new("R312.1.3", GuardingGapRule.Instance, Limit.AtMost(4.375 * Inch, "4-3/8 in"), TextSeen, "no 4-3/8 in sphere passes on the open side of a stair", Weight.Limit),
            new("R312.1.3", LandingGapRule.Instance, Limit.AtMost(4 * Inch, "4 in"), TextSeen, "no 4 in sphere passes", Weight.Limit),
        ],
    };

    /// <summary>Treads of 11 in and more need no nosing.</summary>
    internal static string? DeepTreads(StairPlan plan) =>
        plan.Going >= 11 * Inch * plan.Job.ModelScale ? "no nosing is asked for where the treads are 11 in deep or more" : null;
}
