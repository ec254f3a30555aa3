using System.Collections.Immutable;

namespace Rodwright.Workshop.Shelf;

/// <summary>What came of saving: kept, or somebody else was first and nothing was written.</summary>
/// <param name="Card">The job as it now stands on the shelf.</param>
/// <param name="Others">Empty when the revision was kept; else the revisions made since the one it was based on, oldest first: who changed what.</param>
public sealed record SaveOutcome(JobCard Card, ImmutableArray<RevisionNote> Others)
{
    /// <summary>Whether the revision was kept.</summary>
    public bool Kept => Others.IsEmpty;
}
