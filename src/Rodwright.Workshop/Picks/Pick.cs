using System.Collections.Immutable;

namespace Rodwright.Workshop.Picks;

/// <summary>A thing picked on the rod, in the list or in the round: what it is, what lights up with it, and why it measures what it measures.</summary>
/// <param name="Id">Its id, as marks carry it.</param>
/// <param name="Title">Its name, beginning with a capital.</param>
/// <param name="Kind">What it is and where: "mortice in the turn newel, face S".</param>
/// <param name="Related">Ids that light up with it in every view; never its own.</param>
/// <param name="Facts">Its measurements, the most telling first; at least one.</param>
public sealed record Pick(string Id, string Title, string Kind, ImmutableArray<string> Related, ImmutableArray<Fact> Facts);
