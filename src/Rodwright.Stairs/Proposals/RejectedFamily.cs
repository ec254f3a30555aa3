using System.Collections.Immutable;

namespace Rodwright.Stairs.Proposals;

/// <summary>A family of layouts none of which fits.</summary>
/// <param name="Family">The family.</param>
/// <param name="DecidedBy">The one limit that decides against it, on the stair that comes nearest.</param>
/// <param name="Helps">What would have to change, each by itself enough; none when no single change is.</param>
public sealed record RejectedFamily(Family Family, string DecidedBy, ImmutableArray<Relaxation> Helps)
{
    /// <summary>What would help, in one sentence.</summary>
    public string WouldHelp => Helps.IsEmpty ? "no change of house or newel that was tried lets it in" : string.Join("; or ", Helps.Select(h => h.Words));
}

/// <summary>One change that lets a family in.</summary>
/// <param name="Bound">The limit that it relaxes.</param>
/// <param name="By">By how much, mm; degrees of pitch; risers.</param>
/// <param name="Words">In bench words, with numbers.</param>
public sealed record Relaxation(Bound Bound, double By, string Words);
