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
        Browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium,
            Headless = true,
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
                "--use-angle=swiftshader", "--enable-unsafe-swiftshader",
            ],
        });
        Bench = await starting;
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        playwright?.Dispose();
        await Bench.DisposeAsync();
        Directory.Delete(Bench.Data, recursive: true);
    }

    private static string Chromium =>
        Environment.GetEnvironmentVariable("CHROMIUM_PATH")
        ?? (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).SelectMany(p => new[] { Path.Combine(p, "chromium"), Path.Combine(p, "chromium-browser"), Path.Combine(p, "google-chrome") }).FirstOrDefault(File.Exists)
        ?? throw new FileNotFoundException("no Chromium on the path; install Debian's chromium or set CHROMIUM_PATH");
}
