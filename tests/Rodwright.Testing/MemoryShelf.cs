using System.Collections.Immutable;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Shops;
using Rodwright.Workshop.Tables;

namespace Rodwright.Testing;

/// <summary>A shelf that lasts as long as the process, for tests that are not about a store.</summary>
public sealed class MemoryShelf(TimeProvider time) : IJobShelf
{
    private readonly Lock door = new();
    private readonly Dictionary<Guid, Entry> jobs = [];
    private readonly TimeProvider time = time;

    private sealed class Entry
    {
        public required List<Revision> Revisions { get; init; }

        public required RevisionDraft Newest { get; set; }

        public bool Archived { get; set; }
    }

    /// <inheritdoc/>
    public string Kind => "memory";

    /// <inheritdoc/>
    public IOwnTables Tables => tables ??= new MemoryTables(time, Using);

    private MemoryTables? tables;

    /// <inheritdoc/>
    public IOwnShop Shop => shop ??= new MemoryShop(time);

    private MemoryShop? shop;

    private ImmutableArray<JobCard> Using(string id)
    {
        lock (door) return [.. jobs.Where(j => j.Value.Revisions.Exists(r => r.Text.Contains(OwnTableTexts.NamedAs(id), StringComparison.Ordinal))).Select(j => CardOf(j.Key, j.Value)).OrderBy(c => c.Title, StringComparer.OrdinalIgnoreCase)];
    }

    /// <inheritdoc/>
    public Task<JobCard> Add(RevisionDraft first, CancellationToken stop = default)
    {
        lock (door)
        {
            var id = Guid.CreateVersion7(time.GetUtcNow());
            jobs[id] = new() { Newest = first, Revisions = [new(Note(1, first), first.Text)] };
            return Task.FromResult(CardOf(id, jobs[id]));
        }
    }

    /// <inheritdoc/>
    public Task<ShelfPage> Find(ShelfQuery query, CancellationToken stop = default)
    {
        var words = query.Words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        lock (door)
        {
            var found = jobs.Select(j => CardOf(j.Key, j.Value))
                .Where(c => c.Archived == query.Archived && words.All(w => $"{c.Title} {c.Summary}".Contains(w, StringComparison.OrdinalIgnoreCase)))
                .OrderByDescending(c => c.ChangedAt).ThenByDescending(c => c.Id).ToList();
            return Task.FromResult(new ShelfPage([.. found.Skip(query.Skip).Take(query.Take)], found.Count));
        }
    }

    /// <inheritdoc/>
    public Task<JobCard?> Card(Guid job, CancellationToken stop = default)
    {
        lock (door) return Task.FromResult(jobs.TryGetValue(job, out var entry) ? CardOf(job, entry) : null);
    }

    /// <inheritdoc/>
    public Task<SaveOutcome?> Save(Guid job, int basedOn, RevisionDraft draft, CancellationToken stop = default)
    {
        lock (door)
        {
            if (!jobs.TryGetValue(job, out var entry)) return Task.FromResult<SaveOutcome?>(null);
            if (entry.Revisions.Count == basedOn)
            {
                entry.Revisions.Add(new(Note(basedOn + 1, draft), draft.Text));
                entry.Newest = draft;
                return Task.FromResult<SaveOutcome?>(new(CardOf(job, entry), []));
            }
            return Task.FromResult<SaveOutcome?>(new(CardOf(job, entry), [.. entry.Revisions.Skip(basedOn).Select(r => r.Note)]));
        }
    }

    /// <inheritdoc/>
    public Task<ImmutableArray<RevisionNote>> Revisions(Guid job, CancellationToken stop = default)
    {
        lock (door) return Task.FromResult<ImmutableArray<RevisionNote>>(jobs.TryGetValue(job, out var entry) ? [.. entry.Revisions.Select(r => r.Note)] : []);
    }

    /// <inheritdoc/>
    public Task<Revision?> Open(Guid job, int number, CancellationToken stop = default)
    {
        lock (door) return Task.FromResult(jobs.TryGetValue(job, out var entry) ? entry.Revisions.ElementAtOrDefault(number - 1) : null);
    }

    /// <inheritdoc/>
    public Task<bool> Name(Guid job, int number, string name, CancellationToken stop = default)
    {
        lock (door)
        {
            if (!jobs.TryGetValue(job, out var entry) || entry.Revisions.ElementAtOrDefault(number - 1) is not { } revision) return Task.FromResult(false);
            entry.Revisions[number - 1] = revision with { Note = revision.Note with { Name = name } };
            return Task.FromResult(true);
        }
    }

    /// <inheritdoc/>
    public Task<bool> Archive(Guid job, bool archived, CancellationToken stop = default)
    {
        lock (door)
        {
            if (!jobs.TryGetValue(job, out var entry)) return Task.FromResult(false);
            entry.Archived = archived;
            return Task.FromResult(true);
        }
    }

    private RevisionNote Note(int number, RevisionDraft draft) => new(number, draft.Kind, draft.Words, "", draft.By, time.GetUtcNow());

    private static JobCard CardOf(Guid id, Entry entry) =>
        new(id, entry.Newest.Title, entry.Newest.Summary, entry.Revisions.Count, entry.Newest.By, entry.Revisions[^1].Note.At, entry.Archived);
}
