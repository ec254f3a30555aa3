using System.Collections.Concurrent;
using System.Diagnostics;
using Rodwright.Browser.Tests;

namespace Rodwright.PagesBench.Crowd;

/// <summary>50 people at once on one server, each at a job of their own, each changing a number every five seconds for a minute.</summary>
public static class CrowdRun
{
    private const int People = 50;
    private const int Changes = 12;
    private const double Distance = 18; // mm, there and back
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(5);

    /// <summary>Measures, and prints what came of it.</summary>
    public static async Task Measure(TextWriter to)
    {
        var data = Directory.CreateTempSubdirectory("rodwright-crowd-").FullName;
        var jobs = await BenchJobs.Make(data, People + 1);
        await using (var bench = await BenchProcess.Start(data)) await Measure(to, bench, jobs);
        Directory.Delete(data, recursive: true);
    }

    private static async Task Measure(TextWriter to, BenchProcess bench, IReadOnlyList<Guid> jobs)
    {
        using var web = new HttpClient();
        await Warm(web, bench, jobs[^1]);
        var before = bench.Memory;
        var (opening, changes, errors) = (new ConcurrentBag<double>(), new ConcurrentBag<double>(), new ConcurrentBag<string>());
        var people = new List<Circuit>();
        foreach (var job in jobs.Take(People))
        {
            var start = Stopwatch.GetTimestamp();
            people.Add(await Circuit.Open(web, bench.Address, job));
            opening.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }
        var (opened, worked) = (bench.Memory, bench.Worked);
        await Task.WhenAll(people.Select((person, i) => Work(person, Every / People * i, changes, errors)));
        var after = bench.Memory;
        worked = bench.Worked - worked;
        foreach (var error in people.SelectMany(p => p.Errors)) errors.Add(error);
        Tell(to, opening, changes);
        to.WriteLine();
        to.WriteLine($"Errors: {errors.Count}{string.Concat(errors.Distinct().Take(5).Select(e => "\n  " + e))}");
        to.WriteLine($"Sent to be drawn, each change: {people.Sum(p => p.Received) / Math.Max(1, changes.Count) / 1024} KB");
        to.WriteLine($"Processor time of the server, each change and all that follows from it: {worked.TotalMilliseconds / Math.Max(1, changes.Count):0} ms");
        to.WriteLine($"Memory of the server: {Mb(before)} MB with nobody, {Mb(opened)} MB with {People} come in, {Mb(after)} MB after their minute: {(after - before) / 1048576.0 / People:0.0} MB each");
        foreach (var person in people) await person.DisposeAsync();
    }

    private static async Task Warm(HttpClient web, BenchProcess bench, Guid job)
    {
        await using var person = await Circuit.Open(web, bench.Address, job);
        for (var i = 0; i < 40; i++)
        {
            await person.Drag(i % 2 == 0 ? Distance : -Distance);
            await Task.Delay(50);
        }
    }

    private static async Task Work(Circuit person, TimeSpan first, ConcurrentBag<double> changes, ConcurrentBag<string> errors)
    {
        var start = Stopwatch.GetTimestamp();
        for (var i = 0; i < Changes; i++)
        {
            var wait = first + Every * i - Stopwatch.GetElapsedTime(start);
            if (wait > TimeSpan.Zero) await Task.Delay(wait);
            try
            {
                changes.Add(await person.Drag(i % 2 == 0 ? Distance : -Distance));
            }
            catch (Exception fault) when (fault is TimeoutException or InvalidOperationException)
            {
                errors.Add(fault.Message);
            }
        }
    }

    private static void Tell(TextWriter to, IEnumerable<double> opening, IEnumerable<double> changes)
    {
        var table = new Table();
        table.Add($"{People} people, a change each per {Every.TotalSeconds} s: sent until the new drawing came", changes, "median 250 ms");
        table.Add("One person comes in: page, socket, rod", opening);
        to.WriteLine("server and people on one machine");
        table.Print(to);
    }

    private static long Mb(long bytes) => bytes / 1048576;
}
