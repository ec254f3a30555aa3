using System.Collections.Immutable;
using Rodwright.Stairs.Jobs.Changes;

namespace Rodwright.Stairs.Findings;

/// <summary>What would free a finding, as changes that can be made at one press. Whoever offers it has set the job out with the changes and seen the finding gone.</summary>
/// <param name="Words">What is done, in bench words: "a newel of 100".</param>
/// <param name="Changes">The fields to change, all at once; never empty.</param>
public sealed record Remedy(string Words, ImmutableArray<FieldChange> Changes)
{
    /// <summary>A remedy of one or several changes.</summary>
    public static Remedy Of(string words, params ImmutableArray<FieldChange> changes) => new(words, changes);

    /// <summary>Equal when words and changes are: an array alone would be compared by identity.</summary>
    public bool Equals(Remedy? other) => other is not null && Words == other.Words && Changes.SequenceEqual(other.Changes);

    /// <inheritdoc/>
    public override int GetHashCode() => Changes.Aggregate(Words.GetHashCode(StringComparison.Ordinal), HashCode.Combine);
}
