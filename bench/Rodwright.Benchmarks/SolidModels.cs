using BenchmarkDotNet.Attributes;
using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Paper;
using Rodwright.Joinery;
using Rodwright.Joinery.Solids;
using Rodwright.Joinery.Timber;
using Rodwright.Rod;
using Rodwright.Rod.Packs;
using Rodwright.Rod.Timber;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Shops;

namespace Rodwright.Benchmarks;

/// <summary>
/// The solids of a stair and what is made of them. Wanted, median warm, a winder stair of 13 steps: solids 100 ms (30 to chase), GLB 100 ms more; the whole pack with models and board
/// plan 2 s.
/// </summary>
[MemoryDiagnoser]
public class SolidModels
{
    private static readonly DateOnly Day = new(2026, 1, 1);
    private Job job = null!;
    private Stair stair = null!;
    private RodStyle style = null!;

    /// <summary>Makes the stair.</summary>
    [GlobalSetup]
    public void Make()
    {
        job = Jobs.Kite(13);
        stair = Stair.SetOut(job).Value!;
        style = new(PaperStock.Of(PaperSize.A3.Landscape), null, "2026-01-01");
    }

    /// <summary>The closed solid of every piece, one after the other.</summary>
    [Benchmark]
    public int Solids() => KitSolids.Of(stair.Kit).Length;

    /// <summary>Solids and GLB.</summary>
    [Benchmark]
    public WrittenFile Glb() => StairModel.Glb(stair);

    /// <summary>Solids, GLB, STEP and IFC.</summary>
    [Benchmark]
    public int AllModels() => StairModel.All(stair, Day).Length;

    /// <summary>From the job to every file: sheets, templates, DXF, three models, timber with its boards planned.</summary>
    [Benchmark]
    public int PackWithEverything()
    {
        var made = Stair.SetOut(job).Value!;
        var rod = new RodJob(made, made.Prove(), style);
        var plan = BoardPlan.Of(CuttingList.Of(made.Kit, UsualShop.For(job)));
        return Pack.Draw(rod, booklet: true).Write([.. StairModel.All(made, Day), .. TimberFiles.Make(rod, plan)]).Length;
    }
}
