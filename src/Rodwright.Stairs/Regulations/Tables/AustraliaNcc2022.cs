using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>Australia, National Construction Code 2022, Housing Provisions Part 11.2 (standards.md 7): its text was not read; an older part in nearly the same words was.</summary>
internal static class AustraliaNcc2022
{
    public static Regulation Table { get; } = new()
    {
        Id = "australia-ncc-2022",
        Title = "Australia, National Construction Code 2022, Housing Provisions 11.2",
        Group = "Australia",
        WalkingLine = new(1000, 270, true),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.AlongFaces,
        LeastNarrow = 50,
        TaperedAtLeastStraight = false,
        LeastGoing = 240,
        Measures = "The figure for the narrow end is not known here: it is set out to 50 along the faces, common practice, and no limit is judged. "
            + "Goings of winders are measured as chords in the middle, from 1 m on 270 from each side: from memory.",
        Standing = "Deemed to satisfy; a performance solution may take its place.",
        Clauses =
        [
            new("Table 11.2.2a", RiseRule.Instance, Limit.Between(115, 190), Secondary, "riser 115 to 190", Weight.Limit),
            new("Table 11.2.2a", GoingRule.Instance, Limit.Between(240, 355), Secondary, "going 240 to 355", Weight.Limit),
            new("Table 11.2.2a", TwoRiseAndGoingRule.Instance, Limit.Between(550, 700), Secondary, "slope relationship 550 to 700, a column of the table", Weight.Limit),
            new("11.2.2", UniformRiseRule.Instance, Limit.AtMost(10), Memory, "nominally constant; 5 between neighbours, 10 in a flight", Weight.Advice),
            new("11.2.2", UniformGoingRule.Instance, Limit.AtMost(10), Memory, "nominally constant; 5 between neighbours, 10 in a flight", Weight.Advice),
            new("3.9.1 (earlier)", RisersPerFlightRule.Instance, Limit.Between(2, 18), Secondary, "not more than 18 nor less than 2 rises in each flight", Weight.Limit),
            new("3.9.1 (earlier)", TaperedPerQuarterRule.Instance, Limit.AtMost(3), Secondary, "3 winders in lieu of each quarter landing, 6 in lieu of each half landing", Weight.Limit),
            new("3.9.1 (earlier)", UniformTaperedGoingRule.Instance, Limit.Equal, Secondary, "winders may differ from the straight treads, all of them equal; judged to 1 mm", Weight.Limit),
            new("11.2.2, figure", TaperedGoingRule.Instance, Limit.Between(240, 355), Memory, "measured in the middle below 1 m, from 1 m on 270 from each side", Weight.Advice),
            new("11.2.2, figure", OuterGoingRule.Instance, Limit.Between(240, 355), Memory, "measured in the middle below 1 m, from 1 m on 270 from each side", Weight.Advice),
            new("11.2.2, figure", NarrowAlongFacesRule.Instance, Limit.None, Memory, "clause not read", Weight.Advice),
            new("11.2.2, figure", NarrowStraightRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("11.2.2, figure", NarrowTreadWidthRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("11.2.5", LandingRule.Instance, Limit.AtLeast(750), Memory, "landing at least 750 long", Weight.Advice),
            new("10.x", HeadroomRule.Instance, Limit.AtLeast(2000), Memory, "2000", Weight.Advice),
            NotChecked("11.2.5", Unmeasureds.EndLandings, Memory, "750 long"),
            new("11.3.5", HandrailHeightRule.Instance, Limit.AtLeast(865), Memory, "at least 865", Weight.Advice),
            new("11.3", GuardingHeightRule.Instance, Limit.AtLeast(865), Memory, "flight 865, landing 1000; no 125 sphere through, which was read in an earlier edition", Weight.Advice),
            new("11.3", LandingGuardingRule.Instance, Limit.AtLeast(1000), Memory, "landing 1000", Weight.Advice),
            new("11.3", GuardingGapRule.Instance, Limit.AtMost(125), Memory, "no 125 sphere passes, which was read in an earlier edition", Weight.Advice),
        ],
    };
}
