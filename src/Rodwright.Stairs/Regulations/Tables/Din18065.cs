using Rodwright.Geometry;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>DIN 18065:2020-08 (standards.md 8): scope and changes read; its numbers from published summaries that agree.</summary>
internal static class Din18065
{
    public static Regulation Dwelling { get; } = Table("din-18065-2020", "required stair, dwellings of up to two units", 230, 50,
    [
        Rise(140, 200), Going(230, 370), Width(800),
        new("walking line", TaperedGoingRule.Instance, Limit.Between(230, 370), Secondary, "required stair in dwellings of up to two units: going 230 to 370", Weight.Limit),
        new("tolerances", FirstRiseRule.Instance, Limit.AtMost(15), Secondary, "as built, prefabricated flights in dwellings of up to two units: first rise within 15", Weight.Limit),
    ]);

    public static Regulation Others { get; } = Table("din-18065-2020-other", "required stair, other buildings", 260, 100,
    [
        Rise(140, 190), Going(260, 370), Width(1000),
        new("walking line", TaperedGoingRule.Instance, Limit.Between(260, 370), Secondary, "required stair in other buildings: going 260 to 370", Weight.Limit),
    ]);

    public static Regulation Additional { get; } = Table("din-18065-2020-additional", "additional stair in a dwelling", 210, 50,
    [
        Going(210, 370), Width(500),
        new("walking line", TaperedGoingRule.Instance, Limit.Between(210, 370), Secondary, "stair in a dwelling that is not required: going 210 to 370", Weight.Limit),
    ]);

    private static Clause Rise(double least, double most) =>
        new("boundary table", RiseRule.Instance, Limit.Between(least, most), Secondary, $"rise {Number.Print(least)} to {Number.Print(most)}", Weight.Limit);

    private static Clause Going(double least, double most) =>
        new("boundary table", GoingRule.Instance, Limit.Between(least, most), Secondary, $"going {Number.Print(least)} to {Number.Print(most)}", Weight.Limit);

    private static Clause Width(double least) =>
        new("boundary table", ClearWidthRule.Instance, Limit.AtLeast(least), Secondary, $"usable width at least {Number.Print(least)}; handrails, which are not set out yet, take from it", Weight.Limit);

    private static Regulation Table(string id, string category, double leastGoing, double leastNarrow, Clause[] boundaries) => new()
    {
        Id = id,
        Title = $"DIN 18065:2020-08, {category}",
        Group = "DIN 18065",
        WalkingLine = new(1000, 500, false),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.AlongFaces,
        LeastNarrow = leastNarrow,
        TaperedAtLeastStraight = true,
        LeastGoing = leastGoing,
        Measures = "The going on a curve is the chord between the crossings of the walking line with the nosings. The line runs in the middle, within the walking zone; on stairs "
            + "over 1000 wide it runs 500 from the inner side, which is from memory, not checked against the document. Which narrow end is meant is not known: it is measured along the faces.",
        Standing = "A standard, binding where a Land's building code introduces it; most do.",
        Clauses =
        [
            .. boundaries,
            new("step rule", TwoRiseAndGoingRule.Instance, Limit.Between(590, 650), Secondary, "590 ≤ 2s + a ≤ 650", Weight.Limit),
            new("tolerances", UniformRiseRule.Instance, Limit.AtMost(5), Secondary, "as built: within 5 of the nominal rise, neighbours within 5", Weight.Limit),
            new("tolerances", UniformGoingRule.Instance, Limit.AtMost(5), Secondary, "as built: within 5 of the nominal going, neighbours within 5", Weight.Limit),
            new("tolerances", UniformTaperedGoingRule.Instance, Limit.AtMost(5), Secondary, "as built: within 5 of the nominal going, neighbours within 5", Weight.Limit),
            new("walking line", WalkingBendRule.Instance, Limit.AtLeast(300), Secondary, "bends of the walking line have a radius of at least 300", Weight.Limit),
            new("winders", NarrowAlongFacesRule.Instance, Limit.AtLeast(leastNarrow), Secondary, "narrow end at least 100; 50 in dwellings of up to two units and inside dwellings", Weight.Limit),
            new("winders", NarrowStraightRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("winders", NarrowTreadWidthRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("winders", TaperReachRule.Instance, Limit.AtMostStraightGoings(3.5), Secondary, "tapered steps reach into a straight part by at most 3.5 goings on the walking line", Weight.Limit),
            new("undercut", NosingRule.Instance, Limit.AtLeast(30), Secondary, "closed risers: treads overlap by at least 30 unless the going is 260 or more", Weight.Limit) { Except = DeepTreads },
            new("flights", RisersPerFlightRule.Instance, Limit.Between(3, 18), Secondary, "3 to 18 rises in a flight", Weight.Limit),
            NotChecked("control rules", Unmeasureds.ControlSums, Memory, "a + s = 460 for safety, a − s = 120 for comfort"),
            new("headroom", HeadroomRule.Instance, Limit.AtLeast(2000), Secondary, "2000; up to 250 at the edge may be lower", Weight.Limit),
            NotChecked("landings", Unmeasureds.EndLandings, Memory, "clause not read"),
            new("handrails", HandrailHeightRule.Instance, Limit.None, Memory, "clause not read", Weight.Advice),
            new("guarding", GuardingHeightRule.Instance, Limit.AtLeast(900), Secondary, "900 up to a drop of 12 m; gaps between bars at most 120", Weight.Limit),
            new("guarding", GuardingGapRule.Instance, Limit.AtMost(120), Secondary, "gaps between bars at most 120", Weight.Limit),
        ],
    };

    /// <summary>Goings of 260 and more need no undercut.</summary>
    private static string? DeepTreads(StairPlan plan) =>
        plan.Going >= 260 * plan.Job.ModelScale ? "no undercut is asked for where the going is 260 or more" : null;
}
