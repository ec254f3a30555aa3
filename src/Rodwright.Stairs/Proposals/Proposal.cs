using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Proposals;

/// <summary>A stair that fits and complies.</summary>
/// <param name="Family">Its family of layouts.</param>
/// <param name="Job">The whole job, ready to be set out.</param>
/// <param name="Measures">What it is compared by.</param>
/// <param name="Score">The sum of the ranking; the smaller, the better.</param>
/// <param name="Unbeaten">Whether no other proposal is at least as good in every measure and better in one.</param>
public sealed record Proposal(Family Family, Job Job, Measures Measures, double Score, bool Unbeaten)
{
    /// <summary>Which way it turns.</summary>
    public Hand Hand => Job.Layout.Hand;
}
