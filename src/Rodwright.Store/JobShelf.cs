using System.Collections.Immutable;
using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using Rodwright.Store.Rows;
using Rodwright.Store.Search;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Shops;
using Rodwright.Workshop.Tables;

namespace Rodwright.Store;

/// <summary>
/// A shelf kept in a database. Each call has a connection of its own; a revision and the card that follows it are written in one transaction. One process may
/// hold several, and several processes may share a store.
/// </summary>
public sealed class JobShelf : IJobShelf, IDisposable
{
    internal static readonly Expression<Func<JobRow, JobCard>> AsCard = j => new JobCard(j.Id, j.Title, j.Summary, j.Revision, j.ChangedBy, j.ChangedAt, j.Archived);

    private static readonly Expression<Func<RevisionRow, RevisionNote>> AsNote = r => new RevisionNote(r.Number, r.Kind, r.Words, r.Name, r.By, r.At);

    private readonly StoreProvider provider;
    private readonly TimeProvider clock;

    private JobShelf(StoreProvider provider, TimeProvider clock)
    {
        this.provider = provider;
        this.clock = clock;
        Tables = new OwnTables(provider, clock);
        Shop = new OwnShop(provider, clock);
    }

    /// <inheritdoc/>
    public string Kind => provider.Kind;

    /// <inheritdoc/>
    public IOwnTables Tables { get; }

    /// <inheritdoc/>
    public IOwnShop Shop { get; }

    /// <summary>Carries the store forward, then opens it.</summary>
    internal static async Task<JobShelf> Open(StoreProvider provider, TimeProvider clock, CancellationToken stop)
    {
        await StoreForward.Carry(provider, stop);
        return new(provider, clock);
    }

    /// <inheritdoc/>
    public async Task<JobCard> Add(RevisionDraft first, CancellationToken stop = default)
    {
        DraftCheck.Demand(first, first: true);
        stop.ThrowIfCancellationRequested();
        var now = Now();
        var job = new JobRow
        {
            Id = Guid.CreateVersion7(now), Title = first.Title, Summary = first.Summary, Revision = 1, ChangedBy = first.By, ChangedAt = now,
            Search = SearchText.Of(first.Title, first.Summary),
        };
        var revision = Row(job.Id, 1, first, now);
        await using var context = Context();
        context.Add(job);
        context.Add(revision);
        try
        {
            await context.SaveChangesAsync(CancellationToken.None);
        }
        catch (DbUpdateException) when (Stands(revision))
        {
            // The answer to an earlier try was lost on its way: this one found the job there.
        }
        return Card(job);
    }

    /// <inheritdoc/>
    public async Task<ShelfPage> Find(ShelfQuery query, CancellationToken stop = default)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(query.Words.Length, ShelfQuery.MostCharacters, nameof(query));
        ArgumentOutOfRangeException.ThrowIfNegative(query.Skip, nameof(query));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(query.Take, nameof(query));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(query.Take, ShelfQuery.MostTaken, nameof(query));
        // What no store can hold, no job has.
        if (!ShelfText.CanBeKept(query.Words)) return new([], 0);

        await using var context = Context();
        var jobs = context.Jobs.Where(j => j.Archived == query.Archived);
        // As a plain piece of text, never as a pattern: no character of a word means anything but itself.
        foreach (var word in SearchText.Words(query.Words)) jobs = jobs.Where(j => j.Search!.Contains(word));
        var total = await jobs.CountAsync(stop);
        if (total <= query.Skip) return new([], total);
        var cards = await jobs.OrderByDescending(j => j.ChangedAt).ThenByDescending(j => j.Id).Skip(query.Skip).Take(query.Take).Select(AsCard).ToListAsync(stop);
        return new([.. cards], total);
    }

    /// <inheritdoc/>
    public async Task<JobCard?> Card(Guid job, CancellationToken stop = default)
    {
        await using var context = Context();
        return await Card(context, job, stop);
    }

    /// <inheritdoc/>
    public async Task<SaveOutcome?> Save(Guid job, int basedOn, RevisionDraft draft, CancellationToken stop = default)
    {
        DraftCheck.Demand(draft, first: false);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(basedOn);
        await using var context = Context();
        if (await Card(context, job, stop) is not { } card) return null;
        if (card.Revision != basedOn) return await Overtaken(context, card, basedOn, stop);

        stop.ThrowIfCancellationRequested();
        var now = Now();
        var revision = Row(job, basedOn + 1, draft, now);
        // Written only if the card still is as it was read, and only what changes: not whether it is put away.
        var row = new JobRow
        {
            Id = job, Title = card.Title, Summary = card.Summary, Revision = basedOn, ChangedBy = card.ChangedBy, ChangedAt = card.ChangedAt, Archived = card.Archived,
        };
        context.Attach(row);
        (row.Title, row.Summary, row.Revision, row.ChangedBy, row.ChangedAt) = (draft.Title, draft.Summary, revision.Number, draft.By, now);
        row.Search = SearchText.Of(draft.Title, draft.Summary);
        context.Add(revision);
        try
        {
            await context.SaveChangesAsync(CancellationToken.None);
        }
        catch (DbUpdateException)
        {
            // Somebody was first, or the answer to an earlier try was lost on its way. Anything else is still what it was.
            if (Stands(revision)) return new(Card(row), []);
            if (await Card(context, job, stop) is not { } newest || newest.Revision == basedOn) throw;
            return await Overtaken(context, newest, basedOn, stop);
        }
        return new(Card(row), []);
    }

    /// <inheritdoc/>
    public async Task<ImmutableArray<RevisionNote>> Revisions(Guid job, CancellationToken stop = default)
    {
        await using var context = Context();
        return [.. await context.Revisions.Where(r => r.Job == job).OrderBy(r => r.Number).Select(AsNote).ToListAsync(stop)];
    }

    /// <inheritdoc/>
    public async Task<Revision?> Open(Guid job, int number, CancellationToken stop = default)
    {
        await using var context = Context();
        return await context.Revisions.Where(r => r.Job == job && r.Number == number)
            .Select(r => new Revision(new RevisionNote(r.Number, r.Kind, r.Words, r.Name, r.By, r.At), r.Text)).SingleOrDefaultAsync(stop);
    }

    /// <inheritdoc/>
    public async Task<bool> Name(Guid job, int number, string name, CancellationToken stop = default)
    {
        DraftCheck.DemandKeepable(name, "name", nameof(name));
        stop.ThrowIfCancellationRequested();
        await using var context = Context();
        return await context.Revisions.Where(r => r.Job == job && r.Number == number)
            .ExecuteUpdateAsync(set => set.SetProperty(r => r.Name, name), CancellationToken.None) > 0;
    }

    /// <inheritdoc/>
    public async Task<bool> Archive(Guid job, bool archived, CancellationToken stop = default)
    {
        stop.ThrowIfCancellationRequested();
        await using var context = Context();
        return await context.Jobs.Where(j => j.Id == job).ExecuteUpdateAsync(set => set.SetProperty(j => j.Archived, archived), CancellationToken.None) > 0;
    }

    /// <summary>Lets go of the connections kept for later. Work under way is not disturbed.</summary>
    public void Dispose() => provider.Close();

    private static Task<JobCard?> Card(StoreContext context, Guid job, CancellationToken stop) =>
        context.Jobs.AsNoTracking().Where(j => j.Id == job).Select(AsCard).SingleOrDefaultAsync(stop);

    private static JobCard Card(JobRow j) => new(j.Id, j.Title, j.Summary, j.Revision, j.ChangedBy, j.ChangedAt, j.Archived);

    /// <summary>Who was first. Up to the card's own revision: later ones may be there already, and card and list must say the same.</summary>
    private static async Task<SaveOutcome> Overtaken(StoreContext context, JobCard newest, int basedOn, CancellationToken stop)
    {
        if (basedOn > newest.Revision)
            throw new ArgumentOutOfRangeException(nameof(basedOn), basedOn, $"the newest revision of the job is {newest.Revision}: none can be based on a later one");
        var others = await context.Revisions.Where(r => r.Job == newest.Id && r.Number > basedOn && r.Number <= newest.Revision)
            .OrderBy(r => r.Number).Select(AsNote).ToListAsync(stop);
        return new(newest, [.. others]);
    }

    /// <summary>Whether this very revision is in the store, although writing it seemed to fail.</summary>
    private bool Stands(RevisionRow revision)
    {
        using var context = Context();
        return context.Revisions.Any(r => r.Job == revision.Job && r.Number == revision.Number && r.Ticket == revision.Ticket);
    }

    private static RevisionRow Row(Guid job, int number, RevisionDraft draft, DateTimeOffset now) => new()
    {
        Job = job, Number = number, Kind = draft.Kind, Words = draft.Words, Name = "", By = draft.By, At = now, Ticket = Guid.CreateVersion7(now), Text = draft.Text,
    };

    private DateTimeOffset Now() => StoreTime.Now(clock);

    private StoreContext Context() => new(provider.Options);
}
