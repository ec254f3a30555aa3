using System.Collections.Immutable;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Joinery.Surveys;

/// <summary>The stair in the room that was measured for it.</summary>
public sealed record SurveyReport
{
    /// <summary>Headroom; null when nothing above the stair was measured.</summary>
    public required HeadroomReport? Headroom { get; init; }

    /// <summary>The headroom wanted: the most that a clause of the regulation asks for; null when it asks for none.</summary>
    public required double? HeadroomWanted { get; init; }

    /// <summary>How far the well would have to be longer for that; none when it need not.</summary>
    public required ImmutableArray<WellLonger> WellLonger { get; init; }

    /// <summary>Room to the walls.</summary>
    public required ImmutableArray<WallFit> Walls { get; init; }

    /// <summary>Doors and windows.</summary>
    public required ImmutableArray<OpeningFit> Openings { get; init; }

    /// <summary>Gaps of the wall strings.</summary>
    public required ImmutableArray<Scribing> Scribing { get; init; }

    /// <summary>Every piece at every place on the way in.</summary>
    public required ImmutableArray<WayInVerdict> WayIn { get; init; }

    /// <summary>The report of a kit.</summary>
    public static SurveyReport Of(Kit kit)
    {
        var plan = kit.Plan;
        var headroom = HeadroomReport.Of(plan);
        var wanted = Wanted(plan);
        return new()
        {
            Headroom = headroom,
            HeadroomWanted = wanted,
            WellLonger = headroom is not null && wanted is { } limit ? Stairs.Headroom.WellLonger.For(headroom, limit) : [],
            Walls = WallFit.Of(plan),
            Openings = OpeningFit.Of(plan),
            Scribing = Surveys.Scribing.Of(plan, kit.Strings),
            WayIn = [.. plan.Job.Survey.WayIn.SelectMany(stop => WayInPiece.Of(kit).Select(p => p.At(stop)))],
        };
    }

    /// <summary>The largest thing that can be carried in whole past every place: a flight put together where one passes, else the longest piece; null when nothing was measured or nothing passes.</summary>
    public WayInPiece? Largest => WayIn.GroupBy(v => v.Piece).Where(g => g.All(v => v.Passes)).Select(g => g.Key).OrderByDescending(p => p.Together).ThenByDescending(p => p.Length).FirstOrDefault();

    /// <summary>What is found on it; the headroom's breaches are the regulation's.</summary>
    public ImmutableArray<Finding> Findings(StairPlan plan) => [.. SurveyFindings.Of(plan, this)];

    /// <summary>How sure all of it is: what the plan shows, and the scribing of each string.</summary>
    public ImmutableArray<Certainty> Certainty(Kit kit) => [.. PlanCertainty.Of(kit.Plan), .. ScribingCertainty(kit)];

    private IEnumerable<Certainty> ScribingCertainty(Kit kit)
    {
        var (plan, survey, allowance) = (kit.Plan, kit.Plan.Job.Survey, kit.Plan.Job.Practice.Scribing);
        foreach (var gap in Scribing)
        {
            var board = kit.Strings.First(s => s.Site.Mark == gap.String);
            var from = survey.Place.Wall - 1;
            // The string stands square to the first; every corner between its wall and the first turns the wall, its own plumb leans it.
            var (low, high) = (Math.Min(from, gap.Wall), Math.Max(from, gap.Wall));
            var readings = SurveyReading.Walls(survey).Where(r => r.Path.StartsWith($"survey.walls[{gap.Wall}].plumb", StringComparison.Ordinal)
                || Enumerable.Range(low, high - low).Any(i => r.Path.StartsWith($"survey.walls[{i}].corner", StringComparison.Ordinal)));
            if (Certain.Of($"scribing of {gap.String} to {gap.Name}", survey, readings, Gap, new(null, allowance), $"at most {plan.Units.With(allowance)}", allCorners: true) is { } certain) yield return certain;

            double? Gap(Stairs.Jobs.Survey s) => Surveys.Scribing.Of(plan with { Job = plan.Job with { Survey = s } }, [board]).FirstOrDefault()?.Widest;
        }
    }

    private static double? Wanted(StairPlan plan) =>
        plan.Regulation.Clauses.Where(c => c.Rule is HeadroomRule).Select(c => c.Limit.On(plan, RuleUnit.Millimetres).Least).Max();
}
