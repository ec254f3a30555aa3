using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>Ireland, Technical Guidance Document K, 2014, private stair (standards.md 4): its numbers were not read in the document itself.</summary>
internal static class Ireland2014
{
    public static Regulation Table { get; } = new()
    {
        Id = "ireland-2014-private",
        Title = "Ireland, Technical Guidance Document K, 2014, private stair",
        Group = "Ireland",
        WalkingLine = new(1000, 270, true),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.AlongFaces,
        LeastNarrow = 50,
        TaperedAtLeastStraight = true,
        LeastGoing = 220,
        Measures = "The narrow end is taken as a going along the faces, 50 from memory; 75 is sometimes quoted. Chord or arc is not known: the chord, the shorter, is judged.",
        Standing = "Guidance on Part K of the Second Schedule; other means are allowed. The optimum values of its table are advice.",
        Clauses =
        [
            new("1.1.3-1.1.4, Table 1", RiseRule.Instance, Limit.AtMost(220), Secondary, "recommendations on maximum rise, minimum going, maximum pitch: 220, 220, 42°", Weight.Limit),
            new("Table 1, optimum", RiseRule.Instance, Limit.AtMost(175), Memory, "optimum values 175, 250, 35°", Weight.Advice),
            new("1.1.3-1.1.4, Table 1", GoingRule.Instance, Limit.AtLeast(220), Secondary, "recommendations on maximum rise, minimum going, maximum pitch: 220, 220, 42°", Weight.Limit),
            new("Table 1, optimum", GoingRule.Instance, Limit.AtLeast(250), Memory, "optimum values 175, 250, 35°", Weight.Advice),
            new("1.1.3-1.1.4, Table 1", PitchRule.Instance, Limit.AtMost(42), Secondary, "recommendations on maximum rise, minimum going, maximum pitch: 220, 220, 42°", Weight.Limit),
            new("Table 1, optimum", PitchRule.Instance, Limit.AtMost(35), Memory, "optimum values 175, 250, 35°", Weight.Advice),
            new("1.1", TwoRiseAndGoingRule.Instance, Limit.Between(550, 700), Memory, "550 to 700", Weight.Advice),
            new("1.1", UniformRiseRule.Instance, Limit.Equal, Memory, "same rise for every step; judged to 1 mm", Weight.Advice),
            new("1.1", UniformGoingRule.Instance, Limit.Equal, Memory, "same going for every step; judged to 1 mm", Weight.Advice),
            new("1.1, Table 1", TaperedGoingRule.Instance, Limit.AtLeast(220), Memory, "measured in the middle, or 270 from each side at 1 m and over", Weight.Advice),
            new("1.1, Table 1", TaperedPitchRule.Instance, Limit.AtMost(42), Memory, "measured in the middle, or 270 from each side at 1 m and over", Weight.Advice),
            new("1.1", UniformTaperedGoingRule.Instance, Limit.Equal, Memory, "goings of the tapered treads uniform; judged to 1 mm", Weight.Advice),
            new("1.1", TaperedGoingRule.Instance, Limit.AtLeastStraightGoing, Memory, "not less than the straight going", Weight.Advice),
            new("1.1", OuterGoingRule.Instance, Limit.AtLeastStraightGoing, Memory, "270 from each side at 1 m and over", Weight.Advice),
            new("1.1", NarrowAlongFacesRule.Instance, Limit.AtLeast(50), Memory, "50 at the narrow end; 75 is sometimes quoted", Weight.Advice),
            new("1.1", NarrowTreadWidthRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("1.1", NarrowStraightRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("1.1", RisersPerFlightRule.Instance, Limit.AtMost(16), Memory, "16 risers in a flight; 15 has been quoted", Weight.Advice),
            new("1.1", StraightRunRule.Instance, Limit.AtMost(36), Memory, "more than 36 risers in consecutive flights: a change of direction of 30° or more", Weight.Advice),
            new("1.1", LandingRule.Instance, Limit.AtLeastClearWidth, Secondary, "landing at least as wide as the flight", Weight.Limit),
            new("1.1", HeadroomRule.Instance, Limit.AtLeast(2000), Memory, "2000; a loft conversion 1900 at the centre of the stair, 1800 at its side", Weight.Advice),
            NotChecked("1.1", Unmeasureds.EndLandings, Secondary, "as wide as the flight; at the ground it may slope 1 in 60"),
            NotChecked("1.1", Unmeasureds.Doors, Secondary, "400 clear at a door over a landing"),
            new("1.1", HandrailHeightRule.Instance, Limit.Between(900, 1000), Secondary, "one side below 1 m wide, both from 1 m; not for the bottom two steps; on landings 900 to 1100", Weight.Limit),
            new("1.1", HandrailSidesRule.Instance, Limit.AtLeast(1), Secondary, "a handrail on one side at least", Weight.Limit),
            new("1.1", HandrailSidesRule.Instance, Limit.AtLeast(2), Secondary, "both sides from 1 m wide", Weight.Limit)
            {
                Except = plan => plan.ClearWidth < 1000 * plan.Job.ModelScale ? "narrower than 1 m: a handrail on one side is enough" : null,
            },
            new("section 2", GuardingHeightRule.Instance, Limit.AtLeast(900), Memory, "900 in a dwelling; no 100 sphere through", Weight.Advice),
            new("section 2", LandingGuardingRule.Instance, Limit.AtLeast(900), Memory, "900 in a dwelling", Weight.Advice),
            new("section 2", GuardingGapRule.Instance, Limit.AtMost(100), Memory, "no 100 sphere passes", Weight.Advice),
        ],
    };
}
