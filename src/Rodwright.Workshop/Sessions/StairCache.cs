using System.Collections.Concurrent;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Tables;

namespace Rodwright.Workshop.Sessions;

/// <summary>Revisions set out for pictures and downloads; the last few are kept. Safe for use by many at once.</summary>
public sealed class StairCache(IJobShelf shelf)
{
    private const int Most = 48;
    private readonly ConcurrentDictionary<(Guid Job, int Number), Lazy<Task<BenchState?>>> known = [];
    private readonly ConcurrentQueue<(Guid Job, int Number)> order = [];

    /// <summary>A revision set out; null when there is none.</summary>
    /// <exception cref="InvalidDataException">The stored text no longer reads as a job.</exception>
    public async Task<BenchState?> Of(Guid job, int number)
    {
        var key = (job, number);
        var state = known.GetOrAdd(key, k =>
        {
            order.Enqueue(k);
            return new(() => SetOut(k.Job, k.Number));
        });
        while (order.Count > Most && order.TryDequeue(out var oldest)) known.TryRemove(oldest, out _);
        var found = await state.Value;
        // A revision never changes, but a shop's own table may.
        if (found is not null && RegulationShelf.IsOwn(found.Job.Regulation) && await shelf.Tables.Shelf() is var tables && found.IsStaleBy(tables))
        {
            found = BenchState.Of(found.Job, tables);
            known[key] = new(Task.FromResult<BenchState?>(found));
        }
        // What is not there today may be made tomorrow.
        if (found is null) known.TryRemove(key, out _);
        return found;
    }

    private async Task<BenchState?> SetOut(Guid job, int number) =>
        await shelf.Open(job, number) is { } revision ? BenchState.Of(StoredJob.Read(revision.Text), await shelf.Tables.Shelf()) : null;
}
