using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Solids;

/// <summary>The solids of a whole stair.</summary>
public static class KitSolids
{
    /// <summary>The solid of every part of a kit, in the order of its parts.</summary>
    /// <param name="kit">Of either hand.</param>
    /// <param name="chord">How far a chord may leave the arc it stands for, mm.</param>
    public static ImmutableArray<PlacedSolid> Of(Kit kit, double chord = Tolerance.Chord) => [.. kit.Parts.Select(p => new PlacedSolid(p, PartSolid.Of(p, chord)))];
}
