using BenchmarkDotNet.Attributes;
using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Paper;
using Rodwright.Joinery;
using Rodwright.Rod;
using Rodwright.Rod.Packs;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Benchmarks;

/// <summary>From a job to every file of its pack, in memory. Wanted, median warm, 12 steps: 1 s on two cores.</summary>
[MemoryDiagnoser]
public class WholePack
{
    private Job job = null!;
    private RodStyle style = null!;

    /// <summary>How many steps of a kite stair, short of the upper floor.</summary>
    [Params(3, 12, 24, 60)]
    public int Steps { get; set; }

    /// <summary>Makes the job.</summary>
    [GlobalSetup]
    public void MakeJob()
    {
        job = Jobs.Kite(Steps);
        style = new(PaperStock.Of(PaperSize.A3.Landscape), null, "2026-01-01");
    }

    /// <summary>Set out, proved, drawn and written.</summary>
    [Benchmark]
    public IReadOnlyCollection<WrittenFile> SetOutAndWrite()
    {
        var stair = Stair.SetOut(job).Value!;
        return Pack.Draw(new(stair, stair.Prove(), style)).Write([]);
    }

    /// <summary>Drawn only: where the time goes.</summary>
    [Benchmark]
    public Pack SetOutAndDraw()
    {
        var stair = Stair.SetOut(job).Value!;
        return Pack.Draw(new(stair, stair.Prove(), style));
    }
}
