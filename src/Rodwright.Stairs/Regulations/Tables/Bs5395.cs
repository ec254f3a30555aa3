using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>BS 5395-1:2010, straight stairs and winders, private stair: a code of practice, so advice throughout (standards.md 9a).</summary>
internal static class Bs5395
{
    public static Regulation Table { get; } = new()
    {
        Id = "bs-5395-1-2010",
        Title = "BS 5395-1:2010, code of practice, private stair",
        Group = "BS 5395-1",
        WalkingLine = new(1000, 270, true),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.AlongFaces,
        LeastNarrow = 0,
        TaperedAtLeastStraight = true,
        // 250 is advised below; advice forces no solution of a turn.
        LeastGoing = 0,
        Measures = "Its clauses on winders were not read: goings are measured as chords on the middle line (270 from each side at 1 m and over) and narrow ends in all three ways, without a limit.",
        Standing = "Recommendations: advice only.",
        Clauses =
        [
            new("Table 1", RiseRule.Instance, Limit.Between(150, 200), TextSeen, "Private stair 150 200 250 400 800 900 1 000", Weight.Advice),
            new("Table 1", GoingRule.Instance, Limit.Between(250, 400), TextSeen, "Private stair 150 200 250 400 800 900 1 000", Weight.Advice),
            new("Table 1", ClearWidthRule.Instance, Limit.AtLeast(800), TextSeen, "clear width 800, between handrails, which are not set out yet", Weight.Advice),
            new("Table 1, text", RisersPerFlightRule.Instance, Limit.Between(3, 20), TextSeen, "no fewer than 3, and no more than 20, rises; fewer allowed at the foot of a private stair", Weight.Advice),
            new("Table 1, text", UniformRiseRule.Instance, Limit.Equal, TextSeen, "design rise constant in consecutive flights; judged to 1 mm", Weight.Advice),
            new("winders", TaperedGoingRule.Instance, Limit.None, Memory, "clause not read", Weight.Advice),
            new("winders", NarrowAlongFacesRule.Instance, Limit.None, Memory, "clause not read", Weight.Advice),
            new("winders", NarrowStraightRule.Instance, Limit.None, Memory, "clause not read", Weight.Advice),
            new("winders", NarrowTreadWidthRule.Instance, Limit.None, Memory, "clause not read", Weight.Advice),
            NotChecked("winders", Unmeasureds.Winders, Memory, "clause not read"),
            new("headroom", HeadroomRule.Instance, Limit.None, Memory, "clause not read", Weight.Advice),
            new("Table 1", HandrailHeightRule.Instance, Limit.Between(900, 1000), TextSeen, "handrail 900 to 1000 high", Weight.Advice),
            NotChecked("landings", Unmeasureds.EndLandings, Memory, "clause not read"),
            new("guarding", GuardingHeightRule.Instance, Limit.None, Memory, "clause not read", Weight.Advice),
        ],
    };
}
