using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>What the warranty bodies of the United Kingdom ask of private stairs (standards.md 9c and 1): advice throughout.</summary>
internal static class UkWarranty
{
    public static Regulation Table { get; } = Notes("uk-warranty-2024", "England, Wales and Northern Ireland", 220);

    public static Regulation Scotland { get; } = Notes("uk-warranty-2024-scotland", "Scotland", 225);

    private static Regulation Notes(string id, string where, double going) => new()
    {
        Id = id,
        Title = $"Warranty notes (NHBC Standards 6.6, 2024; LABC Warranty), private stair, {where}",
        Group = "Warranty notes",
        WalkingLine = new(1000, 270, true),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.TreadWidth,
        LeastNarrow = 50,
        TaperedAtLeastStraight = true,
        LeastGoing = going,
        Measures = "The narrow end is limited as tread width; the goings along the faces are kept to the same 50 where a solution exists. Goings are measured as chords in the middle, from 1 m on 270 from each side, as the national documents do.",
        Standing = "What a warranty asks for beside the national document: advice only.",
        Clauses =
        [
            new("NHBC 6.6.8", RiseRule.Instance, Limit.AtMost(220), TextSeen, "rise at most 220", Weight.Advice),
            new("NHBC 6.6.8", GoingRule.Instance, Limit.AtLeast(going), TextSeen, "going at least 220, in Scotland 225", Weight.Advice),
            new("NHBC 6.6.8", PitchRule.Instance, Limit.AtMost(42), TextSeen, "pitch at most 42°", Weight.Advice),
            new("NHBC 6.6.8", TwoRiseAndGoingRule.Instance, Limit.Between(550, 700), TextSeen, "550 to 700", Weight.Advice),
            new("NHBC 6.6", UniformRiseRule.Instance, Limit.Equal, Secondary, "same rise for every step; judged to 1 mm", Weight.Advice),
            new("NHBC 6.6", UniformGoingRule.Instance, Limit.Equal, Secondary, "same going for every step; judged to 1 mm", Weight.Advice),
            new("NHBC 6.6.8", FirstRiseRule.Instance, Limit.AtMost(12), TextSeen, "the floor finish may take up to 12 from the bottom rise", Weight.Advice),
            new("NHBC 6.6", TaperedGoingRule.Instance, Limit.AtLeastStraightGoing, Memory, "as the national document", Weight.Advice),
            new("NHBC 6.6.8", NarrowAlongFacesRule.Instance, Limit.AtLeast(50), TextSeen, "narrow end at least 50", Weight.Advice),
            new("LABC", NarrowTreadWidthRule.Instance, Limit.AtLeast(50), TextSeen, "Minimum tread width to a winder 50", Weight.Advice),
            new("NHBC 6.6", NarrowStraightRule.Instance, Limit.None, Memory, "the other way of measuring a narrow end", Weight.Advice),
            new("NHBC 6.6.6", HeadroomRule.Instance, Limit.AtLeast(2000), TextSeen, "2000 over the entire length and width", Weight.Advice),
            new("NHBC TG 6.6/01", OuterHandrailRule.Instance, Limit.None, Secondary, "one to four winders round a newel that serves as a handhold need none, except in Northern Ireland", Weight.Advice),
            NotChecked("NHBC 6.6.12, LABC", Unmeasureds.Fixings, TextSeen, "strings glued to newels and dowelled or screwed; string fixings at 900 centres, screws 6 and more, 60 in"),
            NotChecked("LABC", Unmeasureds.FlightWidth, Secondary, "no guidance is given for a least width"),
            NotChecked("NHBC 6.6", Unmeasureds.EndLandings, Secondary, "a landing at top and bottom"),
            new("NHBC 6.6", HandrailHeightRule.Instance, Limit.Between(900, 1000), Secondary, "900 to 1000", Weight.Advice),
            new("NHBC 6.6", GuardingHeightRule.Instance, Limit.AtLeast(900), Secondary, "no 100 sphere through", Weight.Advice),
            new("NHBC 6.6", GuardingGapRule.Instance, Limit.AtMost(100), Secondary, "no 100 sphere passes", Weight.Advice),
        ],
    };
}
