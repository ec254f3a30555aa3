using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>Northern Ireland, Technical Booklet H, October 2012, private stair (standards.md 5): its tables were not read in the document itself.</summary>
internal static class NorthernIreland2012
{
    public static Regulation Table { get; } = new()
    {
        Id = "northern-ireland-2012-private",
        Title = "Northern Ireland, Technical Booklet H, 2012, private stair",
        Group = "Northern Ireland",
        WalkingLine = new(1000, 270, true),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.AlongFaces,
        LeastNarrow = 50,
        TaperedAtLeastStraight = true,
        LeastGoing = 220,
        Measures = "The narrow end is taken as a going along the faces. Chord or arc is not known: the chord, the shorter, is judged.",
        Standing = "The booklet is deemed to satisfy regulation H; there is no obligation to follow its methods. Its numbers are from memory: none of them fails a stair.",
        Clauses =
        [
            new("section 3", RiseRule.Instance, Limit.AtMost(220), Memory, "rise at most 220", Weight.Advice),
            new("section 3", GoingRule.Instance, Limit.AtLeast(220), Memory, "going at least 220", Weight.Advice),
            new("section 3", PitchRule.Instance, Limit.AtMost(42), Memory, "pitch at most 42°", Weight.Advice),
            new("section 3", TwoRiseAndGoingRule.Instance, Limit.Between(550, 700), Memory, "550 to 700", Weight.Advice),
            new("section 3", UniformRiseRule.Instance, Limit.Equal, Memory, "same rise for every step; judged to 1 mm", Weight.Advice),
            new("section 3", UniformGoingRule.Instance, Limit.Equal, Memory, "same going for every step; judged to 1 mm", Weight.Advice),
            new("section 3", TaperedGoingRule.Instance, Limit.AtLeast(220), Memory, "measured in the middle, or 270 from each side at 1 m and over", Weight.Advice),
            new("section 3", TaperedPitchRule.Instance, Limit.AtMost(42), Memory, "measured in the middle, or 270 from each side at 1 m and over", Weight.Advice),
            new("section 3", UniformTaperedGoingRule.Instance, Limit.Equal, Memory, "goings of the tapered treads uniform; judged to 1 mm", Weight.Advice),
            new("section 3", TaperedGoingRule.Instance, Limit.AtLeastStraightGoing, Memory, "not less than the straight going", Weight.Advice),
            new("section 3", OuterGoingRule.Instance, Limit.AtLeastStraightGoing, Memory, "270 from each side at 1 m and over", Weight.Advice),
            new("section 3", NarrowAlongFacesRule.Instance, Limit.AtLeast(50), Memory, "going of 50 at the narrow end", Weight.Advice),
            new("section 3", NarrowTreadWidthRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("section 3", NarrowStraightRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            NotChecked("section 3", Unmeasureds.FlightWidth, Secondary, "Northern Ireland sets widths"),
            new("section 3", OuterHandrailRule.Instance, Limit.AtLeast(1), Secondary, "a handrail on the outside of every stair with tapered treads", Weight.Limit),
            new("section 3", HeadroomRule.Instance, Limit.AtLeast(2000), Memory, "2000", Weight.Advice),
            NotChecked("section 3", Unmeasureds.EndLandings, Memory, "clause not read"),
            new("section 3", HandrailHeightRule.Instance, Limit.Between(900, 1000), Memory, "900 to 1000", Weight.Advice),
            new("section 5", GuardingHeightRule.Instance, Limit.AtLeast(900), Memory, "900 in a dwelling; no 100 sphere through", Weight.Advice),
            new("section 5", LandingGuardingRule.Instance, Limit.AtLeast(900), Memory, "900 in a dwelling", Weight.Advice),
            new("section 5", GuardingGapRule.Instance, Limit.AtMost(100), Memory, "no 100 sphere passes", Weight.Advice),
        ],
    };
}
