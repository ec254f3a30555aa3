using System.Collections.Immutable;
using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using Rodwright.Store.Rows;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Tables;

namespace Rodwright.Store;

/// <summary>A shop's own tables kept in the database of its jobs. Each call has a connection of its own.</summary>
internal sealed class OwnTables(StoreProvider provider, TimeProvider clock) : IOwnTables
{
    private static readonly Expression<Func<OwnTableRow, OwnTableCard>> AsCard = t => new OwnTableCard(t.Id, t.Title, t.Version, t.ChangedBy, t.ChangedAt, t.Text);

    public async Task<ImmutableArray<OwnTableCard>> All(CancellationToken stop = default)
    {
        await using var context = Context();
        var cards = await context.Tables.Select(AsCard).ToListAsync(stop);
        // Sorted here: databases differ in how letters follow one another.
        return [.. cards.OrderBy(c => c.Title, StringComparer.OrdinalIgnoreCase).ThenBy(c => c.Id, StringComparer.Ordinal)];
    }

    public async Task<OwnTableCard?> Find(string id, CancellationToken stop = default)
    {
        if (!OwnTableTexts.IsId(id)) return null;
        await using var context = Context();
        return await context.Tables.Where(t => t.Id == id).Select(AsCard).SingleOrDefaultAsync(stop);
    }

    public async Task<OwnTableSaved> Save(OwnTableDraft draft, int basedOn, CancellationToken stop = default)
    {
        Demand(draft);
        ArgumentOutOfRangeException.ThrowIfNegative(basedOn);
        stop.ThrowIfCancellationRequested();
        var now = StoreTime.Now(clock);
        var row = new OwnTableRow { Id = draft.Id, Title = draft.Title, Version = basedOn + 1, ChangedBy = draft.By, ChangedAt = now, Text = draft.Text };
        await using var context = Context();
        if (basedOn == 0)
        {
            context.Add(row);
            try
            {
                await context.SaveChangesAsync(CancellationToken.None);
            }
            catch (DbUpdateException)
            {
                // The id is taken, or the answer to an earlier try was lost on its way. Anything else is still what it was.
                if (await Find(draft.Id, CancellationToken.None) is not { } there) throw;
                return new(Same(there), there);
            }
            return new(true, Card(row));
        }
        var written = await context.Tables.Where(t => t.Id == draft.Id && t.Version == basedOn).ExecuteUpdateAsync(
            set => set.SetProperty(t => t.Title, row.Title).SetProperty(t => t.Version, row.Version).SetProperty(t => t.ChangedBy, row.ChangedBy)
                .SetProperty(t => t.ChangedAt, row.ChangedAt).SetProperty(t => t.Text, row.Text),
            CancellationToken.None);
        if (written > 0) return new(true, Card(row));
        // Taken away meanwhile: what this person has is all there is of it.
        if (await Find(draft.Id, CancellationToken.None) is not { } newest) return await Save(draft, 0, CancellationToken.None);
        return new(Same(newest), newest);

        bool Same(OwnTableCard card) => card.Version == row.Version && card.Text == row.Text && card.ChangedBy == row.ChangedBy && card.ChangedAt == row.ChangedAt;
    }

    public async Task<ImmutableArray<JobCard>> JobsUsing(string id, CancellationToken stop = default)
    {
        if (!OwnTableTexts.IsId(id)) return [];
        var named = OwnTableTexts.NamedAs(id);
        await using var context = Context();
        var cards = await context.Jobs.Where(j => context.Revisions.Any(r => r.Job == j.Id && r.Text.Contains(named))).Select(JobShelf.AsCard).ToListAsync(stop);
        return [.. cards.OrderBy(c => c.Title, StringComparer.OrdinalIgnoreCase).ThenBy(c => c.Id)];
    }

    public async Task<bool> Remove(string id, CancellationToken stop = default)
    {
        if (!OwnTableTexts.IsId(id)) return false;
        stop.ThrowIfCancellationRequested();
        var named = OwnTableTexts.NamedAs(id);
        await using var context = Context();
        // In one statement, so that no job takes it up between the question and the answer.
        return await context.Tables.Where(t => t.Id == id && !context.Revisions.Any(r => r.Text.Contains(named))).ExecuteDeleteAsync(CancellationToken.None) > 0;
    }

    private static void Demand(OwnTableDraft draft)
    {
        if (!OwnTableTexts.IsId(draft.Id)) throw new ArgumentException($"{draft.Id} is no id of an own table", nameof(draft));
        if (string.IsNullOrWhiteSpace(draft.By)) throw new ArgumentException("who keeps a table is not empty", nameof(draft));
        DraftCheck.DemandKeepable(draft.Title, "title", nameof(draft));
        DraftCheck.DemandKeepable(draft.Text, "text", nameof(draft));
        DraftCheck.DemandKeepable(draft.By, "maker's name", nameof(draft));
    }

    private static OwnTableCard Card(OwnTableRow t) => new(t.Id, t.Title, t.Version, t.ChangedBy, t.ChangedAt, t.Text);

    private StoreContext Context() => new(provider.Options);
}
