using Rodwright.Stairs.Rules;
using static Rodwright.Stairs.Regulations.Clause;
using static Rodwright.Stairs.Regulations.Evidence;

namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>Scotland, Technical Handbook, Domestic, section 4.3: any stair that is not private (standards.md 3).</summary>
internal static class ScotlandAnyOther
{
    public static Regulation Table { get; } = Scotland.Table with
    {
        Id = "scotland-any-other",
        Title = "Scotland, Technical Handbook, Domestic, section 4.3, any other stair",
        LeastGoing = 250,
        Clauses =
        [
            new("4.3.2, S3.3", RiseRule.Instance, Limit.AtMost(170), TextSeen, "Any other stair 170 250 34º", Weight.Limit),
            new("4.3.2", RiseRule.Instance, Limit.AtLeast(100), Memory, "least rise 100", Weight.Advice),
            new("4.3.2, S3.3", GoingRule.Instance, Limit.AtLeast(250), TextSeen, "Any other stair 170 250 34º", Weight.Limit),
            new("4.3.2, S3.3", PitchRule.Instance, Limit.AtMost(34), TextSeen, "Any other stair 170 250 34º; largest rise and least going not together", Weight.Limit),
            new("4.3.2, S3.3", TaperedGoingRule.Instance, Limit.AtLeast(250), TextSeen, "Any other stair 170 250 34º", Weight.Limit),
            new("4.3.2, S3.3", TaperedPitchRule.Instance, Limit.AtMost(34), TextSeen, "Any other stair 170 250 34º", Weight.Limit),
            new("S3.19", LandingRule.Instance, Limit.AtLeast(1200), TextSeen, "landing length at least 1200", Weight.Limit),
            .. Scotland.Table.Clauses.Where(c => !Stated.Contains(c.Rule) && (c.Rule != TaperedGoingRule.Instance || c.Limit.Reference != LimitReference.None)
                && c.Rule.Id is not ("handrail" or "guarding" or "end-landings" or "category-going")),
            NotChecked("4.3.3", Unmeasureds.FlightWidth, Memory, "clause for other stairs not read"),
            NotChecked("S3.2, diagram", Unmeasureds.CategoryGoing, TextSeen, "not more than maximum for stair category"),
            NotChecked("S3.19", Unmeasureds.EndLandings, TextSeen, "a landing at top and bottom, 1200 long"),
            new("S3.20, 4.3.14", HandrailHeightRule.Instance, Limit.Between(840, 1000), Memory, "rise above 600: both sides; 840 to 1000 high", Weight.Advice),
            new("S3.20", HandrailSidesRule.Instance, Limit.AtLeast(2), TextSeen, "rise above 600: both sides", Weight.Limit)
            {
                Except = plan => plan.Risers * plan.Rise <= 600 * plan.Job.ModelScale ? "it rises no more than 600" : null,
            },
            new("4.4.2", GuardingHeightRule.Instance, Limit.AtLeast(1100), Memory, "1100; no 100 sphere through", Weight.Advice),
            new("4.4.2", GuardingGapRule.Instance, Limit.AtMost(100), Memory, "no 100 sphere passes", Weight.Advice),
        ],
    };

    /// <summary>What is stated anew above; a private stair's widths do not hold here.</summary>
    private static Rule[] Stated => [RiseRule.Instance, GoingRule.Instance, PitchRule.Instance, TaperedPitchRule.Instance, LandingRule.Instance, ClearWidthRule.Instance];
}
