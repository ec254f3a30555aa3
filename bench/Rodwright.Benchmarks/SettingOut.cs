using BenchmarkDotNet.Attributes;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Benchmarks;

/// <summary>Setting out again after one change, stage by stage. Wanted, median warm, 12 steps: plan and report 1 ms, kit 4 ms more, proof 10 ms more; a half turn of 16 steps: 1.5, 8 and 15 ms.</summary>
[MemoryDiagnoser]
public class SettingOut
{
    private Job job = null!;
    private StairPlan plan = null!;
    private Stair stair = null!;
    private int time;

    /// <summary>What kind of stair.</summary>
    [Params("straight", "kite", "half turn")]
    public string Layout { get; set; } = "";

    /// <summary>How many steps, short of the upper floor.</summary>
    [Params(3, 6, 12, 16, 24, 48, 60)]
    public int Steps { get; set; }

    /// <summary>Makes the job, its plan and its stair.</summary>
    [GlobalSetup]
    public void MakeJob()
    {
        job = Layout switch
        {
            "kite" => Jobs.Kite(Steps),
            "half turn" => Jobs.HalfTurn(Steps),
            _ => Jobs.Straight(Steps),
        };
        plan = Planner.SetOut(job, Jobs.Regulation).Value!;
        stair = Stair.SetOut(job).Value!;
    }

    /// <summary>One change to the job, then the plan and its report.</summary>
    [Benchmark]
    public RegulationReport PlanAndReport() => Judge.Check(Planner.SetOut(Jobs.Changed(job, ++time), Jobs.Regulation).Value!);

    /// <summary>The kit of a plan.</summary>
    [Benchmark]
    public Kit Kit() => Joiner.Make(plan);

    /// <summary>The proof of a kit.</summary>
    [Benchmark]
    public ProofReport Proof() => stair.Prove();
}
