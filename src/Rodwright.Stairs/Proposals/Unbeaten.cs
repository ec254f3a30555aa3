using System.Collections.Immutable;

namespace Rodwright.Stairs.Proposals;

/// <summary>Marks what nothing else beats.</summary>
public static class Unbeaten
{
    /// <summary>The proposals, marked: unbeaten is what no other of them equals in every measure and betters in one.</summary>
    public static ImmutableArray<Proposal> Mark(IReadOnlyList<Proposal> proposals) =>
        [.. proposals.Select(p => p with { Unbeaten = !proposals.Any(other => other.Measures.Beats(p.Measures)) })];
}
