using System.Collections.Immutable;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Parts;

/// <summary>All the pieces of a stair and how they meet.</summary>
/// <param name="Plan">The plan it was made from, of the same hand.</param>
/// <param name="Parts">Strings, newels, treads, nosing pieces, risers, in that order; with a rounded bottom step its block and wedges after the first riser; then the balustrade; then wedges, glue blocks and pegs.</param>
/// <param name="Joints">Every joint between them.</param>
/// <param name="Strings">The strings as set out on their developments; their parts are among <see cref="Parts"/>.</param>
/// <param name="Findings">What pinches in the joinery.</param>
public sealed record Kit(
    StairPlan Plan, ImmutableArray<Part> Parts, ImmutableArray<Joint> Joints, ImmutableArray<StringBoard> Strings, ImmutableArray<Finding> Findings)
{
    /// <summary>The part with an id.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public Part Find(string id) => Parts.First(p => p.Id == id);

    /// <summary>The kit mirrored for a right-hand stair. Developments stay as they are: the same numbers serve both hands.</summary>
    public Kit Mirrored() => this with
    {
        Plan = Plan.Mirrored(),
        Parts = [.. Parts.Select(p => p.Mirrored())],
        Strings = [.. Strings.Select(s => s with { Site = s.Site.Mirrored(), Part = s.Part.Mirrored() })],
    };
}
