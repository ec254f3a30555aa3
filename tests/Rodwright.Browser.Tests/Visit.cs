using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Rodwright.Browser.Tests;

/// <summary>One person's browser window on the workshop. Whatever the page complains of in its console is kept; <see cref="Quiet"/> fails on it.</summary>
public sealed class Visit : IAsyncDisposable
{
    private static readonly Lazy<string> Gallery = new(() => Directory.CreateDirectory(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "gallery")).FullName);
    private readonly IBrowserContext context;

    private Visit(IBrowserContext context, IPage page, string address)
    {
        (this.context, Page, Address) = (context, page, address);
        page.Console += (_, message) =>
        {
            if (message.Type == "error") Complaints.Add(message.Text);
        };
        page.PageError += (_, error) => Complaints.Add(error);
    }

    /// <summary>The page.</summary>
    public IPage Page { get; }

    /// <summary>The server's address.</summary>
    public string Address { get; }

    /// <summary>Errors the page has put out.</summary>
    public ConcurrentBag<string> Complaints { get; } = [];

    /// <summary>Opens a window; a laptop's unless said otherwise.</summary>
    public static async Task<Visit> Begin(IBrowser browser, string address, int width = 1280, int height = 800, bool touch = false, string name = "")
    {
        var context = await browser.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = height }, HasTouch = touch, AcceptDownloads = true, ReducedMotion = ReducedMotion.Reduce, ColorScheme = ColorScheme.Light,
        });
        context.SetDefaultTimeout(60_000);
        Assertions.SetDefaultExpectTimeout(30_000);
        if (name.Length > 0) await context.AddInitScriptAsync($"localStorage.setItem('rodwright.person', '{name}')");
        return new(context, await context.NewPageAsync(), address);
    }

    /// <summary>Goes to the shelf.</summary>
    public async Task ToShelf()
    {
        await Page.GotoAsync(Address + "/");
        await Page.Locator("#new-job").WaitForAsync();
    }

    /// <summary>Makes a job of a sample and opens it; its address.</summary>
    public async Task<string> Sample(string title)
    {
        await ToShelf();
        await Page.ClickAsync("#from-sample");
        await Page.Locator(".samples").GetByRole(AriaRole.Button, new() { Name = title }).ClickAsync();
        await RodReady();
        return Page.Url;
    }

    /// <summary>Waits until the rod hangs on the board.</summary>
    public async Task RodReady()
    {
        // Asked of the page itself: a wait for navigation that begins just as the address changes waits for ever.
        await Page.WaitForFunctionAsync("() => location.pathname.startsWith('/jobs/')");
        await Page.Locator(".sheet .finished [data-of]").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await Page.WaitForFunctionAsync("() => document.querySelector('.bar-words')?.textContent?.match(/(mm|\")$/)");
    }

    /// <summary>Turns to another view of the job by its name in the bar.</summary>
    public async Task ToView(string name)
    {
        await Page.GetByRole(AriaRole.Link, new() { Name = name, Exact = true }).ClickAsync();
        await Page.Locator("#view section").First.WaitForAsync();
    }

    /// <summary>Tab after Tab, as somebody without a mouse would, until what is wanted has the focus.</summary>
    public async Task Reach(string selector)
    {
        await Page.Locator(selector).First.WaitForAsync();
        for (var i = 0; i < 220; i++)
        {
            if (await Page.EvaluateAsync<bool>("s => document.activeElement?.matches(s) === true", selector)) return;
            await Page.Keyboard.PressAsync("Tab");
        }
        Assert.Fail($"{selector} cannot be reached by Tab");
    }

    /// <summary>Waits until the last change is kept as a revision.</summary>
    public Task Kept(int revision) => Page.GetByText($"kept, revision {revision}", new() { Exact = true }).WaitForAsync();

    /// <summary>Types into a field of the panel and leaves it.</summary>
    public async Task Set(string path, string value)
    {
        var field = Page.Locator($"[data-path='{path}'] input");
        if (!await field.IsVisibleAsync()) await Page.Locator("details", new() { Has = field }).Locator("summary").First.ClickAsync();
        await field.FillAsync(value);
        await field.PressAsync("Tab");
    }

    /// <summary>The value a field of the panel shows.</summary>
    public Task<string> Value(string path) => Page.Locator($"[data-path='{path}'] input").InputValueAsync();

    /// <summary>Keeps a picture for the gallery.</summary>
    public Task Picture(string name, bool whole = false) => Page.ScreenshotAsync(new() { Path = Path.Combine(Gallery.Value, name + ".png"), FullPage = whole });

    /// <summary>Fails when the page has complained of anything.</summary>
    public void Quiet() => Assert.Empty(Complaints);

    public async ValueTask DisposeAsync() => await context.CloseAsync();
}
