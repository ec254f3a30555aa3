using System.Globalization;
using Microsoft.Playwright;
using Rodwright.Browser.Tests;

namespace Rodwright.PagesBench.Speed;

/// <summary>One person at a browser, on the machine that serves.</summary>
public static class SpeedRun
{
    private const int Warm = 10;
    private const int Changes = 60;
    private const int Visits = 10;
    private static readonly TimeSpan Moving = TimeSpan.FromSeconds(3);

    /// <summary>Measures, and prints what came of it.</summary>
    public static async Task Measure(TextWriter to)
    {
        var data = Directory.CreateTempSubdirectory("rodwright-speed-").FullName;
        var job = (await BenchJobs.Make(data, 1))[0];
        using var playwright = await Playwright.CreateAsync();
        await using (var bench = await BenchProcess.Start(data))
        await using (var browser = await Chromium.Start(playwright))
        {
            var rod = $"{bench.Address}/jobs/{job:D}";
            var table = new Table();
            await using (var window = await Window.Open(browser))
            {
                await window.Go(rod, Window.Rod);
                await Change(window, table);
                await Move(window, table);
            }
            table.Add("Shelf usable, from the start of the navigation, nothing in the browser's store", await Visit(browser, bench.Address + "/", "#new-job"), "1500 ms");
            table.Add("Rod painted, from the start of the navigation, nothing in the browser's store", await Visit(browser, rod, Window.Rod), "1500 ms");
            EngineTimes.Measure(table);
            to.WriteLine("server and browser on one machine, no screen");
            table.Print(to);
        }
        Directory.Delete(data, recursive: true);
    }

    private static async Task Change(Window window, Table table)
    {
        var times = new List<ChangeTimes>();
        for (var i = 0; i < Warm + Changes; i++)
        {
            await window.Still();
            var value = Goings.Of(i).ToString(CultureInfo.InvariantCulture);
            var took = await window.Ask<ChangeTimes>("value => bench.change('going', value)", value);
            if (i >= Warm) times.Add(took);
        }
        table.Add("One number changed until the new rod is painted", times.Select(t => t.Whole), "median 100 ms, 95 % 180 ms; to chase 60 ms");
        table.Add("  of which: until it goes out", times.Select(t => t.Out));
        table.Add($"  of which: server, there and back ({times.Average(t => t.Size) / 1024:0} KB)", times.Select(t => t.Server));
        table.Add("  of which: taken in by the page", times.Select(t => t.Apply));
        table.Add("  of which: painted (whole frames of 17 ms)", times.Select(t => t.Paint));
    }

    private static async Task Move(Window window, Table table)
    {
        var mouse = window.Page.Mouse;
        var box = await window.Page.Locator(".rod").BoundingBoxAsync() ?? throw new InvalidOperationException("no board");
        var (x, y) = (box.X + box.Width / 2, box.Y + box.Height / 2);
        await window.Still();
        await mouse.MoveAsync(x, y);
        await mouse.DownAsync();
        Tell(table, "panning", await Timed(window, i => mouse.MoveAsync(x + 250 * (float)Math.Sin(i / 15.0), y + 150 * (float)Math.Sin(i / 10.0))));
        await mouse.UpAsync();
        Tell(table, "zooming", await Timed(window, i => mouse.WheelAsync(0, i / 40 % 2 == 0 ? -60 : 60)));
    }

    private static async Task<FrameTimes> Timed(Window window, Func<int, Task> step)
    {
        await window.Page.EvaluateAsync("() => bench.frames()");
        var start = System.Diagnostics.Stopwatch.GetTimestamp();
        for (var i = 0; System.Diagnostics.Stopwatch.GetElapsedTime(start) < Moving; i++)
        {
            await step(i);
            await Task.Delay(8);
        }
        return await window.Ask<FrameTimes>("() => bench.ended()");
    }

    private static void Tell(Table table, string what, FrameTimes times)
    {
        table.Add($"A frame while {what}", times.Frames, "16.7 ms with a screen");
        table.Add($"Tasks over 50 ms while {what}", times.Long, "none");
    }

    private static async Task<IReadOnlyList<double>> Visit(IBrowser browser, string address, string selector)
    {
        var times = new List<double>();
        for (var i = 0; i < Visits; i++)
        {
            await using var window = await Window.Open(browser);
            times.Add(await window.Go(address, selector));
        }
        return times;
    }
}
