using System.Collections.Immutable;

namespace Rodwright.Rod.Revisions;

/// <summary>A piece that is not what it was.</summary>
/// <param name="Id">Stable id of the part.</param>
/// <param name="Mark">As pencilled on it: the new mark, the old one where it is gone.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Kind">Added, removed or changed.</param>
/// <param name="Differences">What of it; empty unless it changed.</param>
public sealed record PieceChange(string Id, string Mark, string Name, ChangeKind Kind, ImmutableArray<PieceDifference> Differences);
