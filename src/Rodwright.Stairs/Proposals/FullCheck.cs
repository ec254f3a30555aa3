using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Proposals;

/// <summary>A candidate set out in plan: everything the quick judgement left out is asked here.</summary>
/// <param name="Against">What stands against it, in words; null when nothing does.</param>
/// <param name="Headroom">Least clearance; null when nothing above was measured.</param>
/// <param name="Narrowest">Narrowest end along the faces; null when no step tapers.</param>
internal sealed record FullCheck(string? Against, double? Headroom, double? Narrowest)
{
    public static FullCheck Of(Job job, Regulation table)
    {
        var planned = Planner.Draft(job, table);
        if (planned.Value is not { } left || planned.Findings.Any(f => f.Severity >= Severity.Breach))
            return new(planned.Findings.First(f => f.Severity >= Severity.Breach).Message, null, null);
        var plan = job.IsRightHanded ? left.Mirrored() : left;
        var report = Judge.Draft(plan);
        if (report.Findings.FirstOrDefault(f => f.Severity >= Severity.Breach) is { } breach) return new(breach.Message, null, null);
        var headroom = HeadroomReport.Of(plan);
        if (headroom is { ArrivalCovered: > 0 }) return new("the well ends before the top riser", null, null);
        if (WallFit.Of(plan).FirstOrDefault(w => w.Least < -0.5) is { } wall) return new($"it would stand in {wall.Name}", null, null);
        if (job.Survey.Walls.Count > 0 && job.Survey.Place.From is null && RoomFrame.Of(plan).From is < 0) return new("it would begin before the beginning of its wall", null, null);
        if (OpeningFit.Of(plan).FirstOrDefault(o => !o.IsClear || o.Crossed) is { } opening) return new($"the {opening.Opening.Words} is not kept clear", null, null);
        return new(null, headroom?.Least?.Least, plan.TaperedSteps.Select(s => (double?)s.NarrowAlongFaces).Min());
    }
}
