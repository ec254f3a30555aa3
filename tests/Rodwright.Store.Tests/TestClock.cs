namespace Rodwright.Store.Tests;

/// <summary>A clock that stands until it is set.</summary>
internal sealed class TestClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 3, 2, 7, 30, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
