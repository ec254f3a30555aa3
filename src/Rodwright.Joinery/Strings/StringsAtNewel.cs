using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>At the newel of a half turn two strings stand in one plane, one above the other: there must be height between them.</summary>
internal static class StringsAtNewel
{
    // Between the centre lines of strings that pass one another, more than their thickness, mm (common practice).
    private const double Apart = 4;

    public static void Report(StairPlan plan, IReadOnlyCollection<StringBoard> boards, List<Finding> findings)
    {
        foreach (var turn in plan.Turns.Where(t => t.Site is { Quarters: 2, Between: 0 } && !t.HasStringsSideBySide))
        {
            var below = boards.FirstOrDefault(b => b.Site.Upper.Newel == turn.Newels[0]);
            var above = boards.FirstOrDefault(b => b.Site.Lower.Newel == turn.Newels[0]);
            if (below is null || above is null) continue;
            var over = GraphCut.HeightAt(below.UpperEdge, below.Site.Reach.To) - GraphCut.HeightAt(above.LowerEdge, above.Site.Reach.From);
            if (over <= 0) continue;
            var practice = plan.Job.Practice;
            var well = plan.Units.IsInches ? plan.Units.Up(below.Site.Thickness + Apart) : below.Site.Thickness + Apart;
            var newel = plan.Units.Up(well + below.Site.Thickness + 2 * practice.NewelHousing);
            var course = Course.Of(plan.Job.Layout);
            var aside = ChangesOfSteps.Sequence(course with { Turns = course.Turns.SetItem(turn.Index, turn.Turn with { Well = well }) });
            var words = $"a well of {plan.Units.Print(well)}, so that the two strings pass side by side" + (newel > practice.Newel ? $", and a newel of {plan.Units.Print(newel)}" : "");
            findings.Add(new("RW4014", Severity.Breach, $"{below.Site.Name}, {above.Site.Name}",
                $"they stand in one plane at the newel of the turn, and the upper edge of {below.Site.Mark} comes {plan.Units.Print(over)} above the lower edge of {above.Site.Mark}",
                words + "; or fewer steps that share the taper")
            {
                Remedies = [newel > practice.Newel ? new(words, [aside, FieldChange.To("practice.newel", newel)]) : Remedy.Of(words, aside)],
            });
        }
    }
}
