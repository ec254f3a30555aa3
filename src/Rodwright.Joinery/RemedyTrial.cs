using System.Collections.Immutable;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Joinery;

/// <summary>
/// What would free a finding at one press. Every remedy given has been set out: the stair exists with it and the finding is gone. Trying takes several times
/// as long as setting out, so it is done for the findings somebody looks at, not for all.
/// </summary>
public static class RemedyTrial
{
    /// <summary>The remedies of a finding of a job, each way of freeing it once; empty where only words can help.</summary>
    /// <param name="job">The job, as it was set out or refused.</param>
    /// <param name="finding">One of what was found on it.</param>
    /// <param name="shelf">The tables it may be judged by; the published ones when null.</param>
    public static ImmutableArray<Remedy> For(Job job, Finding finding, RegulationShelf? shelf = null)
    {
        // A reader that refuses a job has tried already.
        if (!finding.Remedies.IsEmpty || (shelf ?? RegulationShelf.Published).Find(job.Regulation) is not { } regulation) return finding.Remedies;
        var planned = Planner.Advise(job, regulation, finding.Code);
        if (Same(planned.Findings) is { } ofPlan) return Holding(ofPlan);
        if (planned.Value is not { } plan) return [];
        if (Same(Judge.Advise(plan, finding.Code).Findings) is { } ofRegulation) return Holding(ofRegulation);
        return Same(Joiner.Make(plan).Findings) is { } ofKit
            ? [.. ofKit.Remedies.GroupBy(r => string.Join(' ', r.Changes.Select(c => c.Path))).Select(way => way.FirstOrDefault(Holds)).OfType<Remedy>()]
            : [];

        Finding? Same(IEnumerable<Finding> findings) => findings.FirstOrDefault(f => f.Code == finding.Code && f.Where == finding.Where && f.Message == finding.Message);

        ImmutableArray<Remedy> Holding(Finding told) => [.. told.Remedies.Where(Holds)];

        bool Holds(Remedy remedy) => Frees(job, finding, remedy, shelf);
    }

    /// <summary>Whether the job so changed can be set out, and nothing of the finding's code is found at its place any more.</summary>
    public static bool Frees(Job job, Finding finding, Remedy remedy, RegulationShelf? shelf = null) =>
        JobChanges.Apply(job, remedy.Changes).Value is { } changed
        && Stair.Draft(changed, shelf: shelf) is { Value: not null } set
        && !set.Findings.Any(f => f.Code == finding.Code && f.Where == finding.Where);

    /// <summary>What a remedy brings with it: breaches of the job so changed whose like was not found before. Empty also when the job cannot be set out so.</summary>
    /// <param name="stair">The stair as it is.</param>
    /// <param name="remedy">One of its findings' remedies.</param>
    public static ImmutableArray<Finding> Brings(Stair stair, Remedy remedy) =>
        JobChanges.Apply(stair.Job, remedy.Changes).Value is { } changed
            ? [.. Stair.Draft(changed, shelf: RegulationShelf.Holding(stair.Plan.Regulation)).Findings.Where(f => f.Severity == Severity.Breach && !stair.Findings.Any(old => old.Code == f.Code))]
            : [];
}
