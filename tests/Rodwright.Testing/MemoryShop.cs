using Rodwright.Workshop.Shops;

namespace Rodwright.Testing;

/// <summary>A shop that lasts as long as the process.</summary>
/// <param name="time">What time it is.</param>
public sealed class MemoryShop(TimeProvider time) : IOwnShop
{
    private readonly Lock door = new();
    private ShopCard? newest;

    /// <inheritdoc/>
    public Task<ShopCard?> Newest(CancellationToken stop = default)
    {
        lock (door) return Task.FromResult(newest);
    }

    /// <inheritdoc/>
    public Task<ShopSaved> Save(string text, string by, int basedOn, CancellationToken stop = default)
    {
        lock (door)
        {
            if ((newest?.Version ?? 0) != basedOn) return Task.FromResult(new ShopSaved(false, newest!));
            newest = new(basedOn + 1, by, time.GetUtcNow(), text);
            return Task.FromResult(new ShopSaved(true, newest));
        }
    }
}
