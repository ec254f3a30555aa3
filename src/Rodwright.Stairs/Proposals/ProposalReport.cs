using System.Collections.Immutable;

namespace Rodwright.Stairs.Proposals;

/// <summary>What can be built, and why the rest cannot.</summary>
/// <param name="Proposals">Best first.</param>
/// <param name="Rejected">Families that were tried and do not fit.</param>
/// <param name="Dropped">Candidates that kept every limit in plan and were dropped when they were set out in full, with the reason.</param>
/// <param name="CandidatesJudged">How many stairs were judged.</param>
/// <param name="Ranking">What they were ranked by.</param>
public sealed record ProposalReport(
    ImmutableArray<Proposal> Proposals, ImmutableArray<RejectedFamily> Rejected, ImmutableArray<DroppedCandidate> Dropped, long CandidatesJudged, Ranking Ranking);

/// <summary>A candidate that failed at the last.</summary>
/// <param name="Family">Its family.</param>
/// <param name="Stair">Its risers, going, newel and steps, in words.</param>
/// <param name="Reason">What stood against it.</param>
public sealed record DroppedCandidate(Family Family, string Stair, string Reason);
