using BenchmarkDotNet.Attributes;
using Rodwright.Cutting;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Stairs.Shops;

namespace Rodwright.Benchmarks;

/// <summary>Boards planned and proven. Wanted: a second for a stair's list, two seconds for an instance of the published set.</summary>
[MemoryDiagnoser]
public class BoardsPlanned
{
    private readonly Kit kit = Stair.SetOut(Jobs.Kite(13)).Value!.Kit;
    private CuttingProblem published = null!;

    /// <summary>An instance of the published kind: a hundred pieces of 150 to 200 from boards of 1000.</summary>
    [GlobalSetup]
    public void Make()
    {
        var random = new Random(1997);
        published = new([.. Enumerable.Range(0, 100).Select(_ => random.Next(150, 201)).GroupBy(l => l).Select(g => new CutPiece($"p{g.Key}", g.Key, 0, g.Count()))], [new("board", 1000, 0, 1)], Saw.None);
    }

    /// <summary>A hundred pieces from boards of one length.</summary>
    [Benchmark]
    public bool Published() => new BranchAndPrice().Solve(published).IsProven;

    /// <summary>List and board plan of a winder stair.</summary>
    [Benchmark]
    public bool OfAStair() => BoardPlan.Of(CuttingList.Of(kit, UsualShop.For(kit.Plan.Job))).IsProven;
}
