using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;

namespace Rodwright.Workshop.Edits;

/// <summary>Makes one person's change to a job once more on what another person has made of the same job.</summary>
public static class JobMerge
{
    /// <summary>Their job with every field that I changed as I wanted it; fields that I left alone stay theirs.</summary>
    /// <param name="start">The job both started from.</param>
    /// <param name="mine">What I made of it.</param>
    /// <param name="theirs">What they made of it.</param>
    /// <returns>Refused when the two together are no job.</returns>
    public static Outcome<Job> Carry(Job start, Job mine, Job theirs)
    {
        var wanted = JobEdits.Tree(mine);
        return JobChanges.Apply(theirs, [.. JobEdits.Differences(start, mine).Select(d => new FieldChange(d.Path, JobEdits.At(wanted, d.Path)?.ToJsonString()))]);
    }
}
