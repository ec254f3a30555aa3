using System.Collections.Immutable;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Workshop.Tables;

/// <summary>
/// Where a shop keeps its own regulation tables, beside its jobs. When a method returns, what it wrote outlives the process. Safe for use by many at once. A table
/// that is not there is null or false, never an exception; a store that cannot be reached is an exception.
/// </summary>
public interface IOwnTables
{
    /// <summary>Every table, by title.</summary>
    Task<ImmutableArray<OwnTableCard>> All(CancellationToken stop = default);

    /// <summary>One table; null when there is none.</summary>
    Task<OwnTableCard?> Find(string id, CancellationToken stop = default);

    /// <summary>Keeps a table, unless it is no longer as it was when the change was begun.</summary>
    /// <param name="draft">The table.</param>
    /// <param name="basedOn">Version the change was made to; 0 for a new table.</param>
    /// <param name="stop">Gives up before the write; never half way.</param>
    /// <exception cref="ArgumentException">An id that is no own one, nobody's name, or a text that cannot be kept.</exception>
    Task<OwnTableSaved> Save(OwnTableDraft draft, int basedOn, CancellationToken stop = default);

    /// <summary>The jobs of which any revision is judged by a table, put away or not, by title.</summary>
    Task<ImmutableArray<JobCard>> JobsUsing(string id, CancellationToken stop = default);

    /// <summary>Takes a table away, unless a revision of any job is judged by it.</summary>
    /// <returns>False when it is used, or not there.</returns>
    Task<bool> Remove(string id, CancellationToken stop = default);
}

/// <summary>An own table as it is kept.</summary>
/// <param name="Id">Its id, own-….</param>
/// <param name="Title">Its title as the shop wrote it.</param>
/// <param name="Version">1 when made, one more with every change.</param>
/// <param name="ChangedBy">Who changed it last.</param>
/// <param name="ChangedAt">When.</param>
/// <param name="Text">The regulation file.</param>
public sealed record OwnTableCard(string Id, string Title, int Version, string ChangedBy, DateTimeOffset ChangedAt, string Text);

/// <summary>An own table to be kept.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">Its title.</param>
/// <param name="Text">The regulation file.</param>
/// <param name="By">Who keeps it.</param>
public sealed record OwnTableDraft(string Id, string Title, string Text, string By);

/// <summary>What came of keeping a table.</summary>
/// <param name="Kept">False when somebody else was first; nothing was written then.</param>
/// <param name="Card">The table as it is kept now.</param>
public sealed record OwnTableSaved(bool Kept, OwnTableCard Card);
