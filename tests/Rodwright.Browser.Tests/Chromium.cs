using Microsoft.Playwright;

namespace Rodwright.Browser.Tests;

/// <summary>The system's own Chromium, without a window, drawing by processor alone.</summary>
public static class Chromium
{
    /// <summary>Starts it.</summary>
    public static Task<IBrowser> Start(IPlaywright playwright) => playwright.Chromium.LaunchAsync(new()
    {
        ExecutablePath = Where,
        Headless = true,
        Args =
        [
            "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
            "--use-angle=swiftshader", "--enable-unsafe-swiftshader",
        ],
    });

    private static string Where =>
        Environment.GetEnvironmentVariable("CHROMIUM_PATH")
        ?? (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).SelectMany(p => new[] { Path.Combine(p, "chromium"), Path.Combine(p, "chromium-browser"), Path.Combine(p, "google-chrome") }).FirstOrDefault(File.Exists)
        ?? throw new FileNotFoundException("no Chromium on the path; install Debian's chromium or set CHROMIUM_PATH");
}
