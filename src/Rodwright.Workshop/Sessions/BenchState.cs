using System.Collections.Immutable;
using Rodwright.Joinery;
using Rodwright.Joinery.Proof;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Sessions;

/// <summary>A job with all that follows from it. Immutable.</summary>
/// <param name="Job">The job.</param>
/// <param name="Stair">The stair set out; null when it cannot exist.</param>
/// <param name="Proof">Whether it goes together; null without a stair.</param>
/// <param name="Findings">Everything found, of stair and proof.</param>
public sealed record BenchState(Job Job, Stair? Stair, ProofReport? Proof, ImmutableArray<Finding> Findings)
{
    /// <summary>Sets a job out and proves it.</summary>
    public static BenchState Of(Job job)
    {
        var outcome = Stair.SetOut(job);
        return new(job, outcome.Value, outcome.Value?.Prove(), outcome.Findings);
    }
}
