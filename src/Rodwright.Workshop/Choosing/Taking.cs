using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;

namespace Rodwright.Workshop.Choosing;

/// <summary>A proposal taken into a job.</summary>
public static class Taking
{
    /// <summary>The job with the proposal's layout, sides, going, width and newel; all else is the job's own.</summary>
    public static Job Into(Job job, Proposal proposal) => job with
    {
        Layout = proposal.Job.Layout, Sides = proposal.Job.Sides, Going = proposal.Job.Going, Width = proposal.Job.Width, Practice = job.Practice with { Newel = proposal.Job.Practice.Newel },
    };
}
