using BenchmarkDotNet.Attributes;
using Rodwright.Joinery.Proposals;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Benchmarks;

/// <summary>
/// Proposals for an ordinary survey. Wanted: 200,000 candidates judged a second on one core, 200 ms for all of it. <see cref="Judged"/> counts the candidates of the run being measured:
/// divide by the time of <see cref="Judge"/>, in which nothing is set out in full.
/// </summary>
[MemoryDiagnoser]
public class Choosing
{
    private readonly Brief brief = new()
    {
        Title = "measured", Regulation = Jobs.Regulation.Id,
        Survey = new()
        {
            FloorToFloor = [2603],
            Walls = [new WallRun { Length = Readings.Of(3319) }, new WallRun { Length = Readings.Of(2405) }],
            Well = new() { Length = Readings.Of(2641), Width = Readings.Of(1910), Trimmer = Readings.Of(228) },
        },
        Wishes = new() { Hand = Hand.Left },
    };

    /// <summary>How many candidates one run judges.</summary>
    [GlobalSetup]
    public void Judged() => Console.WriteLine($"// {Proposer.Propose(brief, Jobs.Regulation, _ => null).CandidatesJudged} candidates a run");

    /// <summary>Judging, and the plans of the best, without their kits.</summary>
    [Benchmark]
    public long Judge() => Proposer.Propose(brief, Jobs.Regulation, _ => null).CandidatesJudged;

    /// <summary>All of it: every proposal joined and proved.</summary>
    [Benchmark]
    public int Propose() => StairProposals.Propose(brief).Proposals.Length;
}
