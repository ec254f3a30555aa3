using System.Collections.Immutable;
using Rodwright.Stairs.Jobs.Changes;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>Treads, risers and wedges against rise and going.</summary>
internal static class StepChecks
{
    private static readonly ImmutableArray<string> Rise = [.. StairChecks.Height, "layout.sequence", "modelScale"];

    public static ImmutableArray<JobCheck> All { get; } =
    [
        new(JobCodes.Nosing, "practice.nosing", ["going", "practice.nosing"], job => job.Practice.Nosing < job.Going ? null : new(
            $"the nosing, {job.Units.With(job.Practice.Nosing)}, is as deep as the going, {job.Units.With(job.Going)}", $"a nosing of {job.Units.Range(16, 25, 1)} is usual", Remedied.Size(job.Units, "practice.nosing", "a nosing of", 20, 10))),
        new(JobCodes.RiserThickness, "practice.riser", ["going", "practice.riser"], job => job.Practice.Riser < job.Going ? null : new(
            $"the riser, {job.Units.With(job.Practice.Riser)}, is as thick as the going is long, {job.Units.With(job.Going)}", $"risers of {job.Units.Range(9, 14, 1)} are usual", Remedied.Size(job.Units, "practice.riser", "risers of", 12, 6))),
        new(JobCodes.TreadThickness, "practice.tread", [.. Rise, "practice.tread"], job => !StairChecks.HasRise(job) || job.Practice.Tread < job.Rise ? null : new(
            $"the tread, {job.Units.With(job.Practice.Tread)}, is as thick as the rise is high, {job.Units.With(job.Rise)}", $"treads of {job.Units.Range(18, 32, 1)} are usual", Remedied.Size(job.Units, "practice.tread", "treads of", 22, 12))),
        new(JobCodes.TreadWedge, "practice.treadWedge.length", ["going", "practice.riser", "practice.treadWedge"], TreadWedge),
        new(JobCodes.RiserWedge, "practice.riserWedge.length", [.. Rise, "practice.tread", "practice.riserWedge"], RiserWedge),
    ];

    private static Pinch? TreadWedge(Job job)
    {
        var wedge = job.Practice.TreadWedge;
        var space = wedge.Length + job.Practice.Riser + wedge.RunOn;
        return space <= job.Going ? null : new(
            $"the tread wedge's space is {job.Units.With(space)} long (wedge {job.Units.With(wedge.Length)}, riser {job.Units.With(job.Practice.Riser)}, run on {job.Units.With(wedge.RunOn)}); the going is {job.Units.With(job.Going)}",
            $"make the wedge {job.Units.With(Math.Max(0, job.Going - job.Practice.Riser - wedge.RunOn))} or shorter",
            Remedied.Size(job.Units, "practice.treadWedge.length", "tread wedges of", Math.Floor(job.Going - job.Practice.Riser - wedge.RunOn)));
    }

    private static Pinch? RiserWedge(Job job)
    {
        if (!StairChecks.HasRise(job)) return null;
        var wedge = job.Practice.RiserWedge;
        return wedge.Length + wedge.RunOn <= job.Rise ? null : new(
            $"the riser wedge's space is {job.Units.With(wedge.Length + wedge.RunOn)} tall (wedge {job.Units.With(wedge.Length)}, run on {job.Units.With(wedge.RunOn)}); the rise is {job.Units.With(job.Rise)}",
            $"make the wedge {job.Units.With(Math.Max(0, job.Rise - wedge.RunOn))} or shorter",
            Remedied.Size(job.Units, "practice.riserWedge.length", "riser wedges of", Math.Floor(job.Rise - wedge.RunOn)));
    }
}
