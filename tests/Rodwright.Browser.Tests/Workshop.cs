using Microsoft.Playwright;

namespace Rodwright.Browser.Tests;

/// <summary>One server and one browser for all tests that do not need their own.</summary>
public sealed class Workshop : IAsyncLifetime
{
    private IPlaywright? playwright;

    /// <summary>The server.</summary>
    public BenchProcess Bench { get; private set; } = null!;

    /// <summary>The browser.</summary>
    public IBrowser Browser { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        var starting = BenchProcess.Start();
        playwright = await Playwright.CreateAsync();
        Browser = await Chromium.Start(playwright);
        Bench = await starting;
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        playwright?.Dispose();
        await Bench.DisposeAsync();
        Directory.Delete(Bench.Data, recursive: true);
    }
}
