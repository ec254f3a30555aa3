using System.Diagnostics;
using Rodwright.Rod.Machining;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Templates;
using Xunit;

namespace Rodwright.Rod.Tests.Pieces;

public sealed class SpeedTests
{
    [Fact]
    public void Report()
    {
        if (Environment.GetEnvironmentVariable("RENDER") is null) return;
        var rod = RodJobs.Of("left-kite-low");
        Time("pieces", () => PieceSheets.Make(rod).Count);
        Time("templates", () => TemplateSheets.Make(rod).Count);
        Time("dxf+csv", () => PartFiles.Make(rod).Count);
        Time("dxf only drawings", () => rod.Stair.Kit.Parts.Sum(p => PartDxf.Of(p, rod.Stair.Kit).Entities.Length));
    }

    private static void Time(string name, Func<int> what)
    {
        for (var i = 0; i < 20; i++) what();
        var times = new List<double>();
        for (var i = 0; i < 15; i++) { var w = Stopwatch.StartNew(); what(); times.Add(w.Elapsed.TotalMilliseconds); }
        times.Sort();
        Console.WriteLine($"TIME {name} median {times[7]:0.0} ms");
    }
}
