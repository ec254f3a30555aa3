using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Rodwright.Store.Tests;

/// <summary>A line that goes dead after each write: all of it arrives, no answer comes back.</summary>
internal sealed class LostAnswer : SaveChangesInterceptor
{
    /// <summary>The same store, over such a line.</summary>
    public static StoreProvider Over(StoreProvider provider)
    {
        var options = new DbContextOptionsBuilder<StoreContext>(provider.Options).AddInterceptors(new LostAnswer()).Options;
        return provider with { Options = options };
    }

    public override ValueTask<int> SavedChangesAsync(SaveChangesCompletedEventData eventData, int result, CancellationToken cancellationToken = default) =>
        throw new DbUpdateException("the line went dead");
}
