using System.Text.Json;
using Microsoft.Playwright;

namespace Rodwright.PagesBench.Speed;

/// <summary>A browser window that has never been here before, with <see cref="Watch"/> in it.</summary>
internal sealed class Window : IAsyncDisposable
{
    /// <summary>What the rod is known to hang on the board by.</summary>
    public const string Rod = ".sheet .finished [data-of]";

    private readonly IBrowserContext context;

    private Window(IBrowserContext context, IPage page) => (this.context, Page) = (context, page);

    /// <summary>Its page.</summary>
    public IPage Page { get; }

    /// <summary>Opens one, a laptop's.</summary>
    public static async Task<Window> Open(IBrowser browser)
    {
        var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 800 }, ColorScheme = ColorScheme.Light });
        context.SetDefaultTimeout(60_000);
        await context.AddInitScriptAsync(Watch.Script);
        return new(context, await context.NewPageAsync());
    }

    /// <summary>Goes to a page; how long from the start of the navigation until something on it is painted, ms.</summary>
    public async Task<double> Go(string address, string selector)
    {
        await Page.GotoAsync(address, new() { WaitUntil = WaitUntilState.Commit });
        return await Page.EvaluateAsync<double>("selector => bench.until(selector)", selector);
    }

    /// <summary>What a script of the page answers.</summary>
    public async Task<T> Ask<T>(string script, object? with = null) where T : class =>
        (await Page.EvaluateAsync<JsonElement>(script, with)).Deserialize<T>(JsonSerializerOptions.Web) ?? throw new InvalidDataException("the page answered nothing");

    /// <summary>Waits until nothing has gone to the server or come from it for a while.</summary>
    public Task Still() => Page.EvaluateAsync("() => bench.still(200)");

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await context.CloseAsync();
}
