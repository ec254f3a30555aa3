using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>England, Approved Document K, 2013 edition: private stairs (standards.md 1).</summary>
internal static class England2013Private
{
    public static Regulation Table { get; } = new()
    {
        Id = "england-2013-private",
        Title = "England, Approved Document K, 2013 edition, private stair",
        Group = "England",
        WalkingLine = new(1000, 270, true),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.TreadWidth,
        LeastNarrow = 50,
        TaperedAtLeastStraight = true,
        LeastGoing = 220,
        Measures = "The narrow end is limited as tread width, going and nosing together; the goings along the faces are kept to the same 50 where a solution exists. "
            + "The text does not say whether a tapered going is chord or arc: the chord, the shorter, is judged.",
        Standing = "Guidance on requirement K1; another solution may be agreed with the building control body.",
        Clauses =
        [
            new("1.3, Table 1.1", RiseRule.Instance, Limit.Between(150, 220), TextSeen, "Private stair 150 220 220 300", Weight.Limit),
            new("1.3, Table 1.1", GoingRule.Instance, Limit.Between(220, 300), TextSeen, "Private stair 150 220 220 300", Weight.Limit),
            new("Table 1.1 note 1", PitchRule.Instance, Limit.AtMost(42), TextSeen, "maximum pitch for a private stair is 42°", Weight.Limit),
            new("Table 1.1 note *", TwoRiseAndGoingRule.Instance, Limit.Between(550, 700), TextSeen, "the normal relationship, not a limit", Weight.Advice),
            new("1.5-1.6", UniformRiseRule.Instance, Limit.Equal, Secondary, "same rise for every step of a flight; judged to 1 mm", Weight.Limit),
            new("1.5-1.6", UniformGoingRule.Instance, Limit.Equal, Secondary, "same going for every step of a flight; judged to 1 mm", Weight.Limit),
            new("1.25, Table 1.1", TaperedGoingRule.Instance, Limit.AtLeast(220), TextSeen, "tapered treads comply with 1.2 and 1.3, measured on the middle line, or 270 from the side at 1 m and over", Weight.Limit),
            new("1.25, Table 1.1", GreatestGoingRule.Instance, Limit.AtMost(300), TextSeen, "tapered treads comply with 1.2 and 1.3, the longest going included", Weight.Limit),
            new("1.25, Table 1.1 note 1", TaperedPitchRule.Instance, Limit.AtMost(42), TextSeen, "tapered treads comply with 1.2 and 1.3, the pitch included", Weight.Limit),
            new("1.26", UniformTaperedGoingRule.Instance, Limit.Equal, TextSeen, "For consecutive tapered treads, use the same going; judged to 1 mm", Weight.Limit),
            new("1.27", TaperedGoingRule.Instance, Limit.AtLeastStraightGoing, TextSeen, "not less than the going of the straight treads", Weight.Limit),
            new("1.25, 1.27, Diagram 1.9", OuterGoingRule.Instance, Limit.AtLeastStraightGoing, Secondary, "at 1 m and over 270 from each side: both must comply", Weight.Limit),
            new("Diagram 1.9", NarrowTreadWidthRule.Instance, Limit.AtLeast(50), Secondary, "minimum tread width 50 at the narrow end", Weight.Limit),
            new("1998 edition, 1.18", NarrowAlongFacesRule.Instance, Limit.AtLeast(50), TextSeen, "the earlier edition limits the going: at least 50mm at the narrow end", Weight.Advice),
            new("Diagram 1.9", NarrowStraightRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("1.18-1.19, Diagram 1.6", StraightRunRule.Instance, Limit.AtMost(36), Secondary, "more than 36 risers in consecutive flights: a change of direction of 30° or more", Weight.Limit),
            new("1.20", LandingRule.Instance, Limit.AtLeastClearWidth, Secondary, "width and length at least the smallest width of the flight", Weight.Limit),
            NotChecked("1.5", Unmeasureds.LevelTreads, Secondary, "treads level"),
            NotChecked("Table 1.1 note 2", Unmeasureds.External, TextSeen, "going of each step should be a minimum of 280mm"),
            new("1.11-1.12, Diagram 1.3", HeadroomRule.Instance, Limit.AtLeast(2000), Secondary, "2000 over the whole length and width, from the pitch line and floors", Weight.Limit)
            {
                Except = plan => HeadroomRule.OnlyUnderSlope(plan, 2000 * plan.Job.ModelScale) ? "2000 cannot be had under the sloping roof: 1.13 is judged" : null,
            },
            new("1.13, Diagram 1.4", HeadroomMiddleRule.Instance, Limit.AtLeast(1900), Secondary, "loft conversion, where 2000 cannot be had: 1900 at the centre of the stair's width", Weight.Limit)
            {
                Except = plan => HeadroomRule.OnlyUnderSlope(plan, 2000 * plan.Job.ModelScale) ? null : "only where 2000 cannot be had under a sloping roof",
            },
            new("1.13, Diagram 1.4", HeadroomSideRule.Instance, Limit.AtLeast(1800), Memory, "loft conversion, where 2000 cannot be had: 1800 at the side of the stair", Weight.Advice)
            {
                Except = plan => HeadroomRule.OnlyUnderSlope(plan, 2000 * plan.Job.ModelScale) ? null : "only where 2000 cannot be had under a sloping roof",
            },
            NotChecked("1.14-1.17", Unmeasureds.EscapeWidth, Secondary, "no least width here; Approved Documents B and M may ask for one"),
            NotChecked("1.20-1.21", Unmeasureds.EndLandings, Secondary, "a level landing at top and bottom, as wide and long as the flight is wide"),
            NotChecked("1.22-1.24", Unmeasureds.Doors, TextSeen, "400 clear at a door over a bottom landing"),
            new("1.34-1.36", HandrailHeightRule.Instance, Limit.Between(900, 1000), Secondary, "one side below 1 m wide, both from 1 m; 900 to 1000 high", Weight.Limit),
            new("1.34-1.36", HandrailSidesRule.Instance, Limit.AtLeast(1), Secondary, "a handrail on one side at least", Weight.Limit),
            new("1.34-1.36", HandrailSidesRule.Instance, Limit.AtLeast(2), Secondary, "both sides from 1 m wide", Weight.Limit)
            {
                Except = plan => plan.ClearWidth < 1000 * plan.Job.ModelScale ? "narrower than 1 m: a handrail on one side is enough" : null,
            },
            new("1.39-1.41, Diagram 3.1", GuardingHeightRule.Instance, Limit.AtLeast(900), Secondary, "where the drop is more than 600; 900 high, no 100 sphere through", Weight.Limit),
            new("1.39-1.41, Diagram 3.1", LandingGuardingRule.Instance, Limit.AtLeast(900), Secondary, "900 in a dwelling", Weight.Limit),
            new("1.39-1.41", GuardingGapRule.Instance, Limit.AtMost(100), Secondary, "no 100 sphere passes", Weight.Limit),
        ],
    };
}
