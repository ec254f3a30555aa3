using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>
/// Scotland, Building Standards Technical Handbook: Domestic, section 4.3, private stairs (standards.md 3). Rows marked S were read in its predecessor,
/// Technical Standards Part S.
/// </summary>
internal static class Scotland
{
    public static Regulation Table { get; } = new()
    {
        Id = "scotland-private",
        Title = "Scotland, Technical Handbook, Domestic, section 4.3, private stair",
        Group = "Scotland",
        WalkingLine = new(1000, 270, true),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.AlongFaces,
        LeastNarrow = 50,
        TaperedAtLeastStraight = true,
        LeastGoing = 225,
        Measures = "The narrow end is limited as a going, measured along the faces of newel and string. The text does not say whether a tapered going is chord or arc: the chord, the shorter, is judged.",
        Standing = "Guidance on Standard 4.3.",
        Clauses =
        [
            new("4.3.2, S3.3", RiseRule.Instance, Limit.AtMost(220), TextSeen, "Private stair 220 225 42º", Weight.Limit),
            new("4.3.2", RiseRule.Instance, Limit.AtLeast(100), Memory, "least rise 100", Weight.Advice),
            new("4.3.2, S3.3", GoingRule.Instance, Limit.AtLeast(225), TextSeen, "Private stair 220 225 42º", Weight.Limit),
            new("4.3.2, S3.3", PitchRule.Instance, Limit.AtMost(42), TextSeen, "Private stair 220 225 42º; largest rise and least going not together", Weight.Limit),
            new("4.3.2 note 5", TwoRiseAndGoingRule.Instance, Limit.Between(550, 700), TextSeen, "should be at least 550 mm and not more than 700 mm", Weight.Limit),
            new("4.3.2 note 1", UniformRiseRule.Instance, Limit.Equal, TextSeen, "all rises in a flight should be of uniform height; judged to 1 mm", Weight.Limit),
            new("4.3.2 note 2", UniformGoingRule.Instance, Limit.Equal, TextSeen, "measured uniformly along the centreline of the flight; judged to 1 mm", Weight.Limit),
            new("4.3.2, S3.3", TaperedGoingRule.Instance, Limit.AtLeast(225), TextSeen, "Private stair 220 225 42º", Weight.Limit),
            new("4.3.2, S3.3", TaperedPitchRule.Instance, Limit.AtMost(42), TextSeen, "Private stair 220 225 42º", Weight.Limit),
            new("4.3.2 note 3, S3.12", UniformTaperedGoingRule.Instance, Limit.Equal, TextSeen, "going of the tapered treads uniform; judged to 1 mm", Weight.Limit),
            new("4.3.2 note 3, S3.13", TaperedGoingRule.Instance, Limit.AtLeastStraightGoing, TextSeen, "must be at least the going of the straight treads", Weight.Limit),
            new("S3.14", OuterGoingRule.Instance, Limit.AtLeastStraightGoing, TextSeen, "at 1 m and over 270 from each end: the least of both at least the straight going", Weight.Limit),
            new("4.3.2 note 4, S3.12", NarrowAlongFacesRule.Instance, Limit.AtLeast(50), TextSeen, "at the inner end of the tread the going must be at least 50mm", Weight.Limit),
            new("4.3.2 note 4", NarrowTreadWidthRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("4.3.2 note 4", NarrowStraightRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("4.3.4", RisersPerFlightRule.Instance, Limit.Between(3, 16), Memory, "3 to 16 rises in a flight; one or two in some places", Weight.Advice),
            new("4.3.3 (2007)", ClearWidthRule.Instance, Limit.AtLeast(900), TextSeen, "Private Stair 900 mm between handrails, which are not set out yet", Weight.Advice),
            new("4.3.3 (2007)", ClearWidthRule.Instance, Limit.AtLeast(600), TextSeen, "600 where it serves only sanitary accommodation or one room", Weight.Advice),
            new("S3.19", LandingRule.Instance, Limit.AtLeast(900), TextSeen, "in a dwelling, the length may reduce to at least 900mm", Weight.Limit),
            NotChecked("S3.2, diagram", Unmeasureds.CategoryGoing, TextSeen, "not more than maximum for stair category"),
            new("4.3", HeadroomRule.Instance, Limit.AtLeast(2000), Memory, "2000", Weight.Advice),
            NotChecked("S3.19", Unmeasureds.EndLandings, TextSeen, "a landing at top and bottom, 900 long in a dwelling"),
            NotChecked("S3.19c", Unmeasureds.Doors, TextSeen, "400 clear across the landing at a door"),
            new("S3.20, 4.3.14", HandrailHeightRule.Instance, Limit.None, TextSeen, "rise above 600: one side is enough on a private stair between storeys; its height was not read there", Weight.Limit),
            new("S3.20", HandrailSidesRule.Instance, Limit.AtLeast(1), TextSeen, "may have a handrail on only one side", Weight.Limit)
            {
                Except = plan => plan.Risers * plan.Rise <= 600 * plan.Job.ModelScale ? "it rises no more than 600" : null,
            },
            new("4.3.14", HandrailHeightRule.Instance, Limit.Between(840, 1000), Memory, "840 to 1000 above the pitch line", Weight.Advice),
            new("4.4.2", GuardingHeightRule.Instance, Limit.AtLeast(840), Memory, "flight 840, landing 900, no 100 sphere through", Weight.Advice),
            new("4.4.2", LandingGuardingRule.Instance, Limit.AtLeast(900), Memory, "landing 900", Weight.Advice),
            new("4.4.2", GuardingGapRule.Instance, Limit.AtMost(100), Memory, "no 100 sphere passes", Weight.Advice),
        ],
    };
}
