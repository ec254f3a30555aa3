using System.Collections.Immutable;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;

namespace Rodwright.Workshop.Edits;

/// <summary>One change somebody makes to a job: it is made, kept and undone as a whole.</summary>
/// <param name="Changes">The fields changed.</param>
/// <param name="Words">What is done, in bench words: "the turn one step up".</param>
public sealed record JobEdit(ImmutableArray<FieldChange> Changes, string Words)
{
    /// <summary>An edit of one or several fields.</summary>
    public static JobEdit Of(string words, params ImmutableArray<FieldChange> changes) => new(changes, words);

    /// <summary>The edit that applies a remedy.</summary>
    public static JobEdit Of(Remedy remedy) => new(remedy.Changes, remedy.Words);

    /// <summary>The edit with a remedy for what stood against it: both at once.</summary>
    public JobEdit With(Remedy remedy) => new([.. Changes, .. remedy.Changes], $"{Words}; {remedy.Words}");

    /// <summary>Equal when changes and words are: an array alone would be compared by identity.</summary>
    public bool Equals(JobEdit? other) => other is not null && Words == other.Words && Changes.SequenceEqual(other.Changes);

    /// <inheritdoc/>
    public override int GetHashCode() => Changes.Aggregate(Words.GetHashCode(StringComparison.Ordinal), HashCode.Combine);
}
