using Rodwright.Stairs.Jobs;
using Rodwright.Workshop.Edits;

namespace Rodwright.Workshop.Shelf;

/// <summary>Revisions made of jobs.</summary>
public static class ShelfDrafts
{
    /// <summary>A revision of a job: text, title and summary follow from it.</summary>
    public static RevisionDraft Of(RevisionKind kind, Job job, string words, string by) => new(kind, JobFile.Write(job), job.Title, JobSummary.Of(job), words, by);

    /// <summary>The first revision of a job.</summary>
    public static RevisionDraft Made(Job job, string words, string by) => Of(RevisionKind.Made, job, words, by);
}
