using Xunit;
using System.Collections.Concurrent;
using Rodwright.Drawings.Paper;
using Rodwright.Joinery;
using Rodwright.Testing;

namespace Rodwright.Rod.Tests;

/// <summary>Sample jobs set out, on a paper.</summary>
internal static class RodJobs
{
    private static readonly ConcurrentDictionary<string, Stair> Stairs = new();

    public static Stair Stair(string sample) => Stairs.GetOrAdd(sample, s => Joinery.Stair.SetOut(Samples.Job(s)).Value!);

    public static RodJob Of(string sample, string paper = "A3")
    {
        if (!PaperStock.TryParse(paper, out var stock, out var reason)) throw new ArgumentException(reason);
        var stair = Stair(sample);
        return new(stair, stair.Prove(), new(stock, null, "1 March"));
    }

    /// <summary>Every sample on each of the papers, for theories.</summary>
    public static TheoryData<string, string> Everything(params string[] papers)
    {
        var data = new TheoryData<string, string>();
        foreach (var sample in Samples.Names)
            foreach (var paper in papers) data.Add(sample, paper);
        return data;
    }
}
