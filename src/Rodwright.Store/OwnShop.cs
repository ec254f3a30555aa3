using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using Rodwright.Store.Rows;
using Rodwright.Workshop.Shops;

namespace Rodwright.Store;

/// <summary>The shop kept in the database of its jobs, a row for each version. Each call has a connection of its own.</summary>
internal sealed class OwnShop(StoreProvider provider, TimeProvider clock) : IOwnShop
{
    private static readonly Expression<Func<ShopRow, ShopCard>> AsCard = s => new ShopCard(s.Version, s.ChangedBy, s.ChangedAt, s.Text);

    public async Task<ShopCard?> Newest(CancellationToken stop = default)
    {
        await using var context = Context();
        return await context.Shops.OrderByDescending(s => s.Version).Select(AsCard).FirstOrDefaultAsync(stop);
    }

    public async Task<ShopSaved> Save(string text, string by, int basedOn, CancellationToken stop = default)
    {
        if (string.IsNullOrWhiteSpace(by)) throw new ArgumentException("who keeps a shop is not empty", nameof(by));
        DraftCheck.DemandKeepable(by, "keeper's name", nameof(by));
        DraftCheck.DemandKeepable(text, "text", nameof(text));
        ArgumentOutOfRangeException.ThrowIfNegative(basedOn);
        var newest = await Newest(stop);
        if ((newest?.Version ?? 0) is var there && there != basedOn)
            return there > basedOn ? new(false, newest!) : throw new ArgumentOutOfRangeException(nameof(basedOn), basedOn, $"the newest version of the shop is {there}: none can be based on a later one");
        var now = StoreTime.Now(clock);
        var row = new ShopRow { Version = basedOn + 1, ChangedBy = by, ChangedAt = now, Ticket = Guid.CreateVersion7(now), Text = text };
        await using var context = Context();
        context.Add(row);
        try
        {
            await context.SaveChangesAsync(CancellationToken.None);
        }
        catch (DbUpdateException)
        {
            // Somebody was first, or the answer to an earlier try was lost on its way. Anything else is still what it was.
            await using var look = Context();
            if (await look.Shops.AnyAsync(s => s.Version == row.Version && s.Ticket == row.Ticket, CancellationToken.None)) return new(true, Card(row));
            if (await Newest(CancellationToken.None) is not { } other || other.Version == basedOn) throw;
            return new(false, other);
        }
        return new(true, Card(row));
    }

    private static ShopCard Card(ShopRow s) => new(s.Version, s.ChangedBy, s.ChangedAt, s.Text);

    private StoreContext Context() => new(provider.Options);
}
