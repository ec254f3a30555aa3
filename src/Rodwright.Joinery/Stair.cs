using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Surveys;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Joinery;

/// <summary>A job set out: plan, regulation report, kit of parts and everything found on the way. Of the job's own hand.</summary>
/// <param name="Job">The job.</param>
/// <param name="Plan">The stair in plan.</param>
/// <param name="Regulation">Judged clause by clause.</param>
/// <param name="Kit">Parts and joints.</param>
/// <param name="Findings">All findings: job, plan, regulation, joinery.</param>
public sealed record Stair(Job Job, StairPlan Plan, RegulationReport Regulation, Kit Kit, ImmutableArray<Finding> Findings)
{
    /// <summary>The unit in which the job's lengths are read and written.</summary>
    public Units Units => Job.Units;

    /// <summary>Sets a job out, or says why it cannot exist.</summary>
    /// <param name="job">A job as the job file's reader gives it.</param>
    /// <param name="found">What was found in reading it, to be kept with the rest.</param>
    /// <param name="shelf">The tables it may be judged by; the published ones when null. A table of the shop's own that is not among them refuses the job.</param>
    /// <exception cref="ArgumentException">The job names a published regulation that is not in the catalogue.</exception>
    public static Outcome<Stair> SetOut(Job job, IEnumerable<Finding>? found = null, RegulationShelf? shelf = null) => SetOut(job, found, shelf, Planner.SetOut, Judge.Check);

    /// <summary>Sets a job out as <see cref="SetOut(Job, IEnumerable{Finding}, RegulationShelf)"/> does, plan and regulation without hints: to follow a drag, and to try remedies.</summary>
    /// <param name="job">A job as the job file's reader gives it.</param>
    /// <param name="found">What was found in reading it, to be kept with the rest.</param>
    /// <param name="shelf">The tables it may be judged by; the published ones when null.</param>
    /// <exception cref="ArgumentException">The job names a published regulation that is not in the catalogue.</exception>
    public static Outcome<Stair> Draft(Job job, IEnumerable<Finding>? found = null, RegulationShelf? shelf = null) => SetOut(job, found, shelf, Planner.Draft, Judge.Draft);

    private static Outcome<Stair> SetOut(
        Job job, IEnumerable<Finding>? found, RegulationShelf? shelf, Func<Job, Regulation, Outcome<StairPlan>> setOut, Func<StairPlan, RegulationReport> judge)
    {
        var tables = shelf ?? RegulationShelf.Published;
        if (RegulationShelf.IsOwn(job.Regulation) && tables.Find(job.Regulation) is null)
            return Outcome<Stair>.Refused([.. found ?? [], tables.Missing(job.Regulation)]);
        var regulation = tables.Find(job.Regulation)
            ?? throw new ArgumentException($"no regulation {job.Regulation}", nameof(job));
        var planned = setOut(job, regulation);
        var findings = (found ?? []).Concat(planned.Findings).ToList();
        if (planned.Value is not { } plan) return Outcome<Stair>.Refused(findings);
        var report = judge(plan);
        var kit = Joiner.Make(plan);
        findings.AddRange(report.Findings);
        // What the kit's findings carry may free them; only a trial can tell, and that is made on request.
        findings.AddRange(kit.Findings.Select(f => f with { Remedies = [] }));
        if (job.Survey.HasRoom) findings.AddRange(SurveyReport.Of(kit).Findings(kit.Plan));
        if (findings.Any(f => f.Severity == Severity.Error)) return Outcome<Stair>.Refused(findings);
        return Outcome<Stair>.Of(new(job, kit.Plan, report, kit, [.. findings]), findings);
    }

    /// <summary>The stair in the room that was measured for it.</summary>
    public SurveyReport InRoom() => SurveyReport.Of(Kit);

    /// <summary>Proves that the kit goes together.</summary>
    public ProofReport Prove() => Prover.Prove(Kit);
}
