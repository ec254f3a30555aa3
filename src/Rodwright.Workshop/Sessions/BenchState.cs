using System.Collections.Immutable;
using Rodwright.Joinery;
using Rodwright.Joinery.Proof;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Sessions;

/// <summary>A job with all that follows from it. Immutable.</summary>
/// <param name="Job">The job.</param>
/// <param name="Stair">The stair set out; null when it cannot exist.</param>
/// <param name="Proof">Whether it goes together; null without a stair.</param>
/// <param name="Findings">Everything found, of stair and proof.</param>
public sealed record BenchState(Job Job, Stair? Stair, ProofReport? Proof, ImmutableArray<Finding> Findings)
{
    /// <summary>The tables it may be judged by.</summary>
    public RegulationShelf Tables { get; init; } = RegulationShelf.Published;

    /// <summary>Sets a job out by the published tables alone and proves it.</summary>
    public static BenchState Of(Job job) => Of(job, RegulationShelf.Published);

    /// <summary>Sets a job out and proves it.</summary>
    public static BenchState Of(Job job, RegulationShelf tables)
    {
        var outcome = Stair.SetOut(job, shelf: tables);
        return new(job, outcome.Value, outcome.Value?.Prove(), outcome.Findings) { Tables = tables };
    }

    /// <summary>Whether it would come out otherwise by other tables: they hold something else under the job's own table.</summary>
    public bool IsStaleBy(RegulationShelf tables) => RegulationShelf.IsOwn(Job.Regulation) && Tables.Find(Job.Regulation)?.WrittenAs != tables.Find(Job.Regulation)?.WrittenAs;
}
