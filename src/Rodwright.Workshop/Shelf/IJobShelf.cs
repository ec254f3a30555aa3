using System.Collections.Immutable;
using Rodwright.Workshop.Shops;
using Rodwright.Workshop.Tables;

namespace Rodwright.Workshop.Shelf;

/// <summary>
/// Where jobs are kept, every revision of each for ever. A revision is written whole or not at all; when a method returns, what it wrote outlives the process.
/// Safe for use by many at once. A job that is not there is null or false, never an exception; a store that cannot be reached is an exception.
/// Texts must be such as <see cref="ShelfText.CanBeKept"/> allows; nothing is mended in silence.
/// </summary>
public interface IJobShelf
{
    /// <summary>What the store is, for people who look after it: "SQLite" or "PostgreSQL".</summary>
    string Kind { get; }

    /// <summary>The shop's own regulation tables, kept in the same store.</summary>
    IOwnTables Tables { get; }

    /// <summary>The shop's own stock and prices, kept in the same store.</summary>
    IOwnShop Shop { get; }

    /// <summary>Puts a new job on the shelf, with its first revision.</summary>
    /// <param name="first">The revision; its kind is <see cref="RevisionKind.Made"/>.</param>
    /// <param name="stop">Gives up before the write; never half way.</param>
    /// <exception cref="ArgumentException">Another kind, nobody's name, or a text that cannot be kept.</exception>
    Task<JobCard> Add(RevisionDraft first, CancellationToken stop = default);

    /// <summary>The jobs that match.</summary>
    /// <exception cref="ArgumentException">The question is out of its bounds.</exception>
    Task<ShelfPage> Find(ShelfQuery query, CancellationToken stop = default);

    /// <summary>One job; null when there is none.</summary>
    Task<JobCard?> Card(Guid job, CancellationToken stop = default);

    /// <summary>Keeps a revision, unless the newest is no longer the one it was based on.</summary>
    /// <param name="job">The job.</param>
    /// <param name="basedOn">Number of the revision the change was made to.</param>
    /// <param name="draft">The revision.</param>
    /// <param name="stop">Gives up before the write; never half way.</param>
    /// <returns>Null when there is no such job.</returns>
    /// <exception cref="ArgumentException">A kind that only the first revision may have, nobody's name, a text that cannot be kept, or a revision to be based on that the job never had.</exception>
    Task<SaveOutcome?> Save(Guid job, int basedOn, RevisionDraft draft, CancellationToken stop = default);

    /// <summary>All revisions of a job, oldest first; empty when there is no such job.</summary>
    Task<ImmutableArray<RevisionNote>> Revisions(Guid job, CancellationToken stop = default);

    /// <summary>One revision; null when there is none.</summary>
    Task<Revision?> Open(Guid job, int number, CancellationToken stop = default);

    /// <summary>Gives a revision a name, or takes it away with an empty one.</summary>
    /// <returns>False when there is no such revision.</returns>
    /// <exception cref="ArgumentException">A name that cannot be kept.</exception>
    Task<bool> Name(Guid job, int number, string name, CancellationToken stop = default);

    /// <summary>Puts a job away, or takes it out again; neither counts as a change of it.</summary>
    /// <returns>False when there is no such job.</returns>
    Task<bool> Archive(Guid job, bool archived, CancellationToken stop = default);
}
