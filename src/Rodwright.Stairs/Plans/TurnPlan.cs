using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>A quarter turn as set out.</summary>
/// <param name="Kind">Tapered steps or landing.</param>
/// <param name="Hand">Which way it turns going up.</param>
/// <param name="Method">Id of the method used.</param>
/// <param name="FirstRiser">e_in: how far the first riser face stands outside the newel's centre line, mm.</param>
/// <param name="LastRiser">e_out, likewise for the last riser, mm.</param>
/// <param name="DecidedBy">Which constraint decided e, in words.</param>
/// <param name="Centre">The newel's centre, where the centre lines of the two newel strings cross.</param>
/// <param name="FirstLine">Number of the turn's first riser.</param>
/// <param name="LastLine">Number of the turn's last riser.</param>
/// <param name="Steps">What is measured on its tapered steps; empty for a landing.</param>
public sealed record TurnPlan(
    TurnKind Kind, Hand Hand, string Method, double FirstRiser, double LastRiser, string DecidedBy,
    Point2 Centre, int FirstLine, int LastLine, ImmutableArray<TaperedStep> Steps)
{
    /// <summary>Mirrored in the y axis.</summary>
    public TurnPlan Mirrored() => this with { Centre = Centre.Mirrored };
}
