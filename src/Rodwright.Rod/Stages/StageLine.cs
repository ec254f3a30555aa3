using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Rod.Stages;

/// <summary>One line of the rod, or a few drawn in one go, with its instruction.</summary>
/// <param name="Id">Stable and unique on the rod: the stage's id, a slash, the line's.</param>
/// <param name="Name">What it is: "riser 4".</param>
/// <param name="Kind">Faint or lined in.</param>
/// <param name="Paths">Where it lies, in the frame its stage's <see cref="Bench"/> names, mm.</param>
/// <param name="Of">Id of the part, riser or line it belongs to.</param>
/// <param name="Instruction">How it is found.</param>
/// <param name="Telling">What it shares with lines found alike; null for a line told by itself.</param>
/// <param name="Face">On a newel, the index of its face; else 0.</param>
public sealed record StageLine(
    string Id, string Name, LineKind Kind, ImmutableArray<Path2> Paths, string Of, Instruction Instruction, Telling? Telling = null, int Face = 0);
