using System.Collections.Immutable;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Surveys;

/// <summary>How sure the survey makes what a plan shows: rise, room, headroom, and every clause that depends on what was measured.</summary>
public static class PlanCertainty
{
    private static readonly LimitRange Free = new(null, null);

    /// <summary>Everything that depends on a reading, in the order of the survey.</summary>
    public static ImmutableArray<Certainty> Of(StairPlan plan)
    {
        var survey = plan.Job.Survey;
        var heights = SurveyReading.Heights(survey).ToImmutableArray();
        var found = ImmutableArray.CreateBuilder<Certainty?>();
        found.Add(Certain.Of("rise", survey, heights, s => s.Height / plan.Risers, Free, ""));
        found.AddRange(Clauses(plan, heights));
        found.AddRange(Rooms(plan));
        found.AddRange(Headrooms(plan, heights));
        return [.. found.OfType<Certainty>()];
    }

    /// <summary>Clauses whose measurement changes with the height. All of them grow or fall with the rise.</summary>
    private static IEnumerable<Certainty?> Clauses(StairPlan plan, ImmutableArray<SurveyReading> heights)
    {
        foreach (var clause in plan.Regulation.Clauses)
        {
            if (clause.Rule is HeadroomRule or HeadroomMiddleRule or HeadroomSideRule || clause.Except(plan) is not null) continue;
            var range = clause.Limit.On(plan, clause.Rule.Unit);
            if (range is { Least: null, Most: null } || clause.Rule.Measure(plan).ToList() is not { Count: > 0 } measured) continue;
            var worst = measured.Select((m, i) => (m, i)).MinBy(x => range.Spare(x.m.Value)).i;
            var quantity = (Survey s) => clause.Rule.Measure(With(plan, s)).Skip(worst).Select(m => (double?)m.Value).FirstOrDefault();
            if (Certain.Of($"{clause.Rule.Title}, {clause.Number}", plan.Job.Survey, heights, quantity, range, clause.Limit.Words(clause.Rule, range, plan.Units), clause.Rule.Unit == RuleUnit.Degrees ? "degrees" : "mm") is { } certain
                && certain.High - certain.Low > 1e-9) yield return certain;
        }
    }

    private static IEnumerable<Certainty?> Rooms(StairPlan plan)
    {
        var survey = plan.Job.Survey;
        if (survey.Walls.Count == 0) yield break;
        var readings = SurveyReading.Walls(survey).ToImmutableArray();
        var goings = plan.Steps.TakeWhile(s => s == StepKind.Straight).Count();
        if (survey.Place.From is null && RoomFrame.Of(plan).From is > 0 && goings > 0)
        {
            yield return Certain.Of("the going there is room for along the wall", survey, readings, s => RoomFrame.Of(With(plan, s)).From is { } from ? plan.Going + from / goings : null,
                new(plan.Going, null), $"at least {plan.Units.With(plan.Going)}");
        }
        foreach (var fit in WallFit.Of(plan))
        {
            if (fit.Wall == survey.Place.Wall - 1 || survey.Place.From is null && fit.Wall == survey.Place.Wall) continue;
            yield return Certain.Of($"room to {fit.Name}", survey, readings, s => WallFit.Of(With(plan, s)).FirstOrDefault(f => f.Wall == fit.Wall)?.Least, new(0, null), $"at least {plan.Units.With(0)}");
        }
    }

    private static IEnumerable<Certainty?> Headrooms(StairPlan plan, ImmutableArray<SurveyReading> heights)
    {
        if (HeadroomReport.Of(plan) is not { } report) yield break;
        var survey = plan.Job.Survey;
        // A clause passed over for a slope still limits what is level.
        var clauses = plan.Regulation.Clauses.Where(c => c.Rule is HeadroomRule or HeadroomMiddleRule or HeadroomSideRule).ToList();
        foreach (var (clearance, middle) in report.Under.Select(c => (c, false)).Concat(report.InMiddle.Select(c => (c, true))))
        {
            var under = clearance.Under.Ceiling;
            SurveyReading[] readings =
            [
                .. heights, .. under < 0 ? SurveyReading.WellOf(survey) : [.. Own(survey, under), .. SurveyReading.WellOf(survey).Where(r => r.Path != "survey.well.trimmer")],
                // A stair that stands in a corner of the room is moved by the walls that make the corner.
                .. survey.Place.From is null ? SurveyReading.Walls(survey).Where(r => !r.Path.Contains("plumb", StringComparison.Ordinal)) : [],
            ];
            var slope = clearance.Under is { Slopes: true, OverUpperFloor: true };
            var judged = clauses.Where(c => c.Rule is HeadroomMiddleRule == middle && (slope ? c.Except(plan) is null : c.Rule is HeadroomRule)).ToList();
            if (judged.Count == 0 && middle) continue;
            foreach (var clause in judged.DefaultIfEmpty(null))
            {
                var range = clause?.Limit.On(plan, RuleUnit.Millimetres) ?? Free;
                var limit = clause is null || range is { Least: null, Most: null } ? "" : clause.Limit.Words(clause.Rule, range, plan.Units);
                yield return Certain.Of($"{(middle ? "headroom in the middle" : "headroom")} under {clearance.Under.Name}{(clause is null ? "" : $", {clause.Number}")}", survey, readings, s => Least(plan, s, under, middle), range, limit, worseHigh: r => WorseHigh(survey, r, clearance.Under));
            }
        }
    }

    /// <summary>
    /// Which way a reading can only cost headroom. A larger well shows more of a ceiling and less of the floor; what hangs from the upper floor goes up with it by more than any step
    /// below it does; under what belongs to the lower storey the steps alone go up.
    /// </summary>
    private static bool WorseHigh(Survey survey, SurveyReading reading, Overhead under)
    {
        if (reading.Path.StartsWith("survey.well", StringComparison.Ordinal)) return !under.IsTrimmer;
        var raises = reading.Put(survey, reading.High).Height > reading.Put(survey, reading.Low).Height;
        return raises != (under.IsTrimmer || under.OverUpperFloor);
    }

    private static IEnumerable<SurveyReading> Own(Survey survey, int ceiling) =>
        SurveyReading.Ceilings(survey).Where(r => r.Path.StartsWith($"survey.ceilings[{ceiling}]", StringComparison.Ordinal));

    private static double? Least(StairPlan plan, Survey survey, int ceiling, bool middle)
    {
        var with = With(plan, survey);
        var frame = RoomFrame.Of(with);
        var report = HeadroomReport.Of(with, frame, [.. Overheads.Of(with, frame).Where(o => o.Ceiling == ceiling)]);
        return (middle ? report.InMiddle : report.Under).FirstOrDefault()?.Least;
    }

    /// <summary>The plan does not depend on the survey but for its rise and its place: both are read from the job.</summary>
    private static StairPlan With(StairPlan plan, Survey survey) => plan with { Job = plan.Job with { Survey = survey } };
}
