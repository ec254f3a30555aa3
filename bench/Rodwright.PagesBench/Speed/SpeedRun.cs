using System.Globalization;
using Microsoft.Playwright;
using Rodwright.Browser.Tests;

namespace Rodwright.PagesBench.Speed;

/// <summary>One person at the sample of 13 steps, in Chromium: a change of one number until the rod is painted, the first page, and moving the sheet.</summary>
public static class SpeedRun
{
    private const int Warm = 12;
    private const int Changes = 60;
    private const int Pages = 10;

    /// <summary>Measures, and prints what came of it.</summary>
    public static async Task Measure(TextWriter to)
    {
        var data = Directory.CreateTempSubdirectory("rodwright-speed-").FullName;
        var job = (await BenchJobs.Make(data, 1))[0];
        await using var bench = await BenchProcess.Start(data);
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await Chromium.Start(playwright);
        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1280, Height = 800 } });
        var rod = $"{bench.Address}/jobs/{job}";
        await Come(page, rod, Painted);
        var changes = await Change(page);
        var moves = await Move(page);
        var (shelf, rods) = (new List<double>(), new List<double>());
        for (var i = 0; i < Pages; i++)
        {
            shelf.Add(await Come(page, bench.Address + "/", "#new-job"));
            rods.Add(await Come(page, rod, Painted));
        }
        var table = new Table();
        table.Add("A change of one number until the new rod is painted", changes, "median 100 ms, 95 % 180 ms");
        table.Add("Shelf asked for until it can be used", shelf, "1500 ms");
        table.Add("Job asked for until its rod is painted", rods, "1500 ms");
        table.Add("A frame while the sheet is dragged and magnified", moves.Frames);
        to.WriteLine("server and browser on one machine, Chromium drawing without a graphics card");
        table.Print(to);
        to.WriteLine();
        to.WriteLine($"Tasks over 50 ms while the sheet is dragged and magnified: {moves.Long.Length}{string.Concat(moves.Long.Select(l => string.Create(CultureInfo.InvariantCulture, $" {l:0} ms")))}");
        await bench.DisposeAsync();
        Directory.Delete(data, recursive: true);
    }

    private const string Painted = ".sheet .finished [data-of]";

    /// <summary>Goes to a page and waits until it is what it should be, and painted; ms.</summary>
    private static async Task<double> Come(IPage page, string address, string ready)
    {
        await page.GotoAsync(address);
        await page.Locator(ready).First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        // Time runs from the navigation's start, as the browser counts it.
        return await page.EvaluateAsync<double>("() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now()))))");
    }

    /// <summary>From the field's change to the second frame after the rod's own elements were replaced.</summary>
    private static async Task<IReadOnlyList<double>> Change(IPage page)
    {
        const string once = """
            going => new Promise(done => {
                const field = document.querySelector('[data-path=going] input');
                const start = performance.now();
                const seen = new MutationObserver(() => {
                    seen.disconnect();
                    requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now() - start)));
                });
                seen.observe(document.querySelector('.sheet'), { childList: true, subtree: true });
                field.value = going;
                field.dispatchEvent(new Event('change', { bubbles: true }));
            })
            """;
        var times = new List<double>();
        for (var i = 0; i < Warm + Changes; i++)
        {
            var time = await page.EvaluateAsync<double>(once, (226 + i % 15).ToString(CultureInfo.InvariantCulture));
            if (i >= Warm) times.Add(time);
            await page.WaitForTimeoutAsync(120);
        }
        return times;
    }

    private static async Task<(double[] Frames, double[] Long)> Move(IPage page)
    {
        await page.EvaluateAsync("""
            () => {
                window.frames_ = []; window.long_ = []; window.moving_ = true;
                new PerformanceObserver(list => { if (window.moving_) window.long_.push(...list.getEntries().map(e => e.duration)); }).observe({ type: 'longtask' });
                let last = performance.now();
                const tick = now => { window.frames_.push(now - last); last = now; if (window.moving_) requestAnimationFrame(tick); };
                requestAnimationFrame(tick);
            }
            """);
        var box = (await page.Locator(".rod").BoundingBoxAsync())!;
        var (x, y) = (box.X + box.Width / 2, box.Y + box.Height / 2);
        for (var i = 0; i < 8; i++)
        {
            await page.Mouse.MoveAsync(x, y);
            await page.Mouse.WheelAsync(0, -120);
            await page.WaitForTimeoutAsync(40);
        }
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        for (var i = 0; i < 120; i++)
        {
            await page.Mouse.MoveAsync((float)(x + 150 * Math.Sin(i / 10.0)), (float)(y + 100 * Math.Cos(i / 10.0)));
            await page.WaitForTimeoutAsync(16);
        }
        await page.Mouse.UpAsync();
        await page.EvaluateAsync("() => { window.moving_ = false; }");
        return (await page.EvaluateAsync<double[]>("() => window.frames_.slice(1)"), await page.EvaluateAsync<double[]>("() => window.long_"));
    }
}
