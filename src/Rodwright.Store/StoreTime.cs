namespace Rodwright.Store;

/// <summary>The time of a write. A database may keep less of a second than the clock gives: what is returned is what will be read again.</summary>
internal static class StoreTime
{
    private const long TicksKept = TimeSpan.TicksPerMicrosecond;

    public static DateTimeOffset Now(TimeProvider clock)
    {
        var now = clock.GetUtcNow().UtcTicks;
        return new(now - now % TicksKept, TimeSpan.Zero);
    }
}
