using System.Collections.Immutable;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Tables;

namespace Rodwright.Testing;

/// <summary>Own tables that last as long as the process.</summary>
/// <param name="time">What time it is.</param>
/// <param name="jobsUsing">The jobs judged by a table.</param>
public sealed class MemoryTables(TimeProvider time, Func<string, ImmutableArray<JobCard>> jobsUsing) : IOwnTables
{
    private readonly Lock door = new();
    private readonly Dictionary<string, OwnTableCard> tables = [];

    /// <inheritdoc/>
    public Task<ImmutableArray<OwnTableCard>> All(CancellationToken stop = default)
    {
        lock (door) return Task.FromResult<ImmutableArray<OwnTableCard>>([.. tables.Values.OrderBy(t => t.Title, StringComparer.OrdinalIgnoreCase)]);
    }

    /// <inheritdoc/>
    public Task<OwnTableCard?> Find(string id, CancellationToken stop = default)
    {
        lock (door) return Task.FromResult(tables.GetValueOrDefault(id));
    }

    /// <inheritdoc/>
    public Task<OwnTableSaved> Save(OwnTableDraft draft, int basedOn, CancellationToken stop = default)
    {
        lock (door)
        {
            if (tables.TryGetValue(draft.Id, out var there) && there.Version != basedOn) return Task.FromResult(new OwnTableSaved(false, there));
            tables[draft.Id] = new(draft.Id, draft.Title, basedOn + 1, draft.By, time.GetUtcNow(), draft.Text);
            return Task.FromResult(new OwnTableSaved(true, tables[draft.Id]));
        }
    }

    /// <inheritdoc/>
    public Task<ImmutableArray<JobCard>> JobsUsing(string id, CancellationToken stop = default) => Task.FromResult(jobsUsing(id));

    /// <inheritdoc/>
    public Task<bool> Remove(string id, CancellationToken stop = default)
    {
        lock (door) return Task.FromResult(jobsUsing(id).IsEmpty && tables.Remove(id));
    }
}
