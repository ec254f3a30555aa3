using System.Collections.Immutable;
using Rodwright.Stairs.Jobs.Changes;
using static Rodwright.Stairs.Jobs.Checks.JobCheck;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>Treads, risers and wedges against rise and going.</summary>
internal static class StepChecks
{
    private static readonly ImmutableArray<string> Rise = [.. StairChecks.Height, "layout.sequence", "modelScale"];

    public static ImmutableArray<JobCheck> All { get; } =
    [
        new(JobCodes.Nosing, "practice.nosing", ["going", "practice.nosing"], j => j.Practice.Nosing < j.Going ? null : new(
            $"the nosing, {Mm(j.Practice.Nosing)}, is as deep as the going, {Mm(j.Going)}", "a nosing of 16 to 25 mm is usual", Remedied.Size("practice.nosing", "a nosing of", 20, 10))),
        new(JobCodes.RiserThickness, "practice.riser", ["going", "practice.riser"], j => j.Practice.Riser < j.Going ? null : new(
            $"the riser, {Mm(j.Practice.Riser)}, is as thick as the going is long, {Mm(j.Going)}", "risers of 9 to 14 mm are usual", Remedied.Size("practice.riser", "risers of", 12, 6))),
        new(JobCodes.TreadThickness, "practice.tread", [.. Rise, "practice.tread"], j => !StairChecks.HasRise(j) || j.Practice.Tread < j.Rise ? null : new(
            $"the tread, {Mm(j.Practice.Tread)}, is as thick as the rise is high, {Mm(j.Rise)}", "treads of 18 to 32 mm are usual", Remedied.Size("practice.tread", "treads of", 22, 12))),
        new(JobCodes.TreadWedge, "practice.treadWedge.length", ["going", "practice.riser", "practice.treadWedge"], TreadWedge),
        new(JobCodes.RiserWedge, "practice.riserWedge.length", [.. Rise, "practice.tread", "practice.riserWedge"], RiserWedge),
    ];

    private static Pinch? TreadWedge(Job job)
    {
        var wedge = job.Practice.TreadWedge;
        var space = wedge.Length + job.Practice.Riser + wedge.RunOn;
        return space <= job.Going ? null : new(
            $"the tread wedge's space is {Mm(space)} long (wedge {Mm(wedge.Length)}, riser {Mm(job.Practice.Riser)}, run on {Mm(wedge.RunOn)}); the going is {Mm(job.Going)}",
            $"make the wedge {Mm(Math.Max(0, job.Going - job.Practice.Riser - wedge.RunOn))} or shorter",
            Remedied.Size("practice.treadWedge.length", "tread wedges of", Math.Floor(job.Going - job.Practice.Riser - wedge.RunOn)));
    }

    private static Pinch? RiserWedge(Job job)
    {
        if (!StairChecks.HasRise(job)) return null;
        var wedge = job.Practice.RiserWedge;
        return wedge.Length + wedge.RunOn <= job.Rise ? null : new(
            $"the riser wedge's space is {Mm(wedge.Length + wedge.RunOn)} tall (wedge {Mm(wedge.Length)}, run on {Mm(wedge.RunOn)}); the rise is {Mm(job.Rise)}",
            $"make the wedge {Mm(Math.Max(0, job.Rise - wedge.RunOn))} or shorter",
            Remedied.Size("practice.riserWedge.length", "riser wedges of", Math.Floor(job.Rise - wedge.RunOn)));
    }
}
