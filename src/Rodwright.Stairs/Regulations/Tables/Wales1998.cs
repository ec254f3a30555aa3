using Rodwright.Geometry;
using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>Wales, Approved Document K, 1998 edition as amended (standards.md 2). Its practical limits are boxes of rise and going: a pair keeps them in any one.</summary>
internal static class Wales1998
{
    private static readonly Limit PrivatePairs = Limit.WithRise(new RiseAndGoing(155, 220, 245, 260), new RiseAndGoing(165, 200, 223, 300));

    public static Regulation Private { get; } = Table(
        "wales-1998-private", "private stair", 223,
        [
            new("1.3a", RiseRule.Instance, Limit.Between(155, 220), TextSeen, "Any rise between 155mm and 220mm used with any going between 245mm …", Weight.Limit),
            new("1.3a", GoingRule.Instance, PrivatePairs, TextSeen, "155 to 220 with 245 to 260, or 165 to 200 with 223 to 300", Weight.Limit),
            new("1.4, Table 1", GoingRule.Instance, Limit.AtLeast(220), Secondary, "the alternative to 1.3a: rise at most 220, going at least 220, pitch at most 42°", Weight.Advice),
            new("1.4, Table 1", PitchRule.Instance, Limit.AtMost(42), Secondary, "the alternative to 1.3a: rise at most 220, going at least 220, pitch at most 42°", Weight.Advice),
            new("1.18, 1.3a", TaperedGoingRule.Instance, PrivatePairs, TextSeen, "rise and going of tapered treads as of straight ones, in the middle, or 270 from each side at 1 m and over", Weight.Limit),
            new("1.18, 1.3a", OuterGoingRule.Instance, PrivatePairs, TextSeen, "1m or wider measure 270mm from each side", Weight.Limit),
        ],
        new Clause("1.18, 1.4", TaperedPitchRule.Instance, Limit.AtMost(42), Secondary, "the alternative to 1.3a: pitch at most 42°", Weight.Advice));

    public static Regulation Institutional { get; } = Table("wales-1998-institutional", "institutional or assembly stair", 280, Plain("1.3b", 135, 180, 280, 340));

    public static Regulation Other { get; } = Table("wales-1998-other", "other stair", 250, Plain("1.3c", 150, 190, 250, 320));

    private static Clause[] Plain(string number, double riseLeast, double riseMost, double goingLeast, double goingMost) =>
    [
        new(number, RiseRule.Instance, Limit.Between(riseLeast, riseMost), TextSeen, $"rise {Number.Print(riseLeast)} to {Number.Print(riseMost)}", Weight.Limit),
        new(number, GoingRule.Instance, Limit.Between(goingLeast, goingMost), TextSeen, $"going {Number.Print(goingLeast)} to {Number.Print(goingMost)}", Weight.Limit),
        new("1.18, " + number, TaperedGoingRule.Instance, Limit.Between(goingLeast, goingMost), TextSeen, "rise and going of tapered treads as of straight ones, in the middle, or 270 from each side at 1 m and over", Weight.Limit),
        new("1.18, " + number, OuterGoingRule.Instance, Limit.Between(goingLeast, goingMost), TextSeen, "1m or wider measure 270mm from each side", Weight.Limit),
    ];

    private static Regulation Table(string id, string category, double leastGoing, Clause[] goings, params Clause[] more) => new()
    {
        Id = id,
        Title = $"Wales, Approved Document K, 1998 edition, {category}",
        Group = "Wales",
        WalkingLine = new(1000, 270, true),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.AlongFaces,
        LeastNarrow = 50,
        TaperedAtLeastStraight = true,
        LeastGoing = leastGoing,
        Measures = "The narrow end is limited as a going, measured along the faces of newel and string. The text does not say whether a tapered going is chord or arc: the chord, the shorter, is judged.",
        Standing = "Guidance on the building regulations; another solution may be agreed. That Wales still builds by this edition is from memory, not checked against the document. "
            + "Where a private stair keeps none of the pairs of 1.3a but the alternative of 1.4, ask the building control body.",
        Clauses =
        [
            .. goings,
            .. more,
            new("1.5", TwoRiseAndGoingRule.Instance, Limit.Between(550, 700), TextSeen, "the normal relationship, not a limit", Weight.Advice),
            new("1.3", UniformRiseRule.Instance, Limit.Equal, Memory, "same rise for every step of a flight; judged to 1 mm", Weight.Advice),
            new("1.3", UniformGoingRule.Instance, Limit.Equal, Memory, "same going for every step of a flight; judged to 1 mm", Weight.Advice),
            new("1.19", UniformTaperedGoingRule.Instance, Limit.Equal, TextSeen, "For consecutive tapered treads, use the same going; judged to 1 mm", Weight.Limit),
            new("1.19", TaperedGoingRule.Instance, Limit.AtLeastStraightGoing, TextSeen, "not less than the going of the straight treads", Weight.Limit),
            new("1.18b, 1.19", OuterGoingRule.Instance, Limit.AtLeastStraightGoing, TextSeen, "at 1 m and over 270 from each side: both must comply", Weight.Limit),
            new("1.18", NarrowAlongFacesRule.Instance, Limit.AtLeast(50), TextSeen, "going of tapered treads should measure at least 50mm", Weight.Limit),
            new("1.18", NarrowTreadWidthRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("1.18", NarrowStraightRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("1.10", HeadroomRule.Instance, Limit.AtLeast(2000), Memory, "2000; a loft conversion 1900 at the centre of the stair, 1800 at its side", Weight.Advice),
            NotChecked("1.16", Unmeasureds.Doors, TextSeen, "400 clear at a door over a landing"),
            NotChecked("1.17", Unmeasureds.EndLandings, TextSeen, "level; at the ground it may be 1 in 20"),
            new("1.27", HandrailHeightRule.Instance, Limit.Between(900, 1000), TextSeen, "one side below 1 m wide, both from 1 m; not beside the two bottom steps; 900 to 1000 to its top", Weight.Limit),
            new("1.27", HandrailSidesRule.Instance, Limit.AtLeast(1), TextSeen, "at least one side if they are less than 1m wide", Weight.Limit),
            new("1.27", HandrailSidesRule.Instance, Limit.AtLeast(2), TextSeen, "both sides from 1 m wide", Weight.Limit)
            {
                Except = plan => plan.ClearWidth < 1000 * plan.Job.ModelScale ? "narrower than 1 m: a handrail on one side is enough" : null,
            },
            new("guarding", GuardingHeightRule.Instance, Limit.None, Memory, "clause not read", Weight.Advice),
        ],
    };
}
