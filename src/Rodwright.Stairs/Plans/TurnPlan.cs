using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Plans;

/// <summary>A turn as set out.</summary>
/// <param name="Kind">Tapered steps or landing.</param>
/// <param name="Hand">Which way it turns going up.</param>
/// <param name="Method">Id of the method used.</param>
/// <param name="FirstRiser">e_in: how far the first riser face stands outside the newel's centre line, mm.</param>
/// <param name="LastRiser">e_out, likewise for the last riser, mm.</param>
/// <param name="DecidedBy">Which constraint decided e, in words.</param>
/// <param name="Centre">The newel's centre: of a quarter turn, where the centre lines of its two inner strings cross.</param>
/// <param name="FirstLine">Number of the turn's first riser.</param>
/// <param name="LastLine">Number of the turn's last riser.</param>
/// <param name="Steps">What is measured on its tapered steps, those shared with the flights among them; empty for a landing.</param>
public sealed record TurnPlan(
    TurnKind Kind, Hand Hand, string Method, double FirstRiser, double LastRiser, string DecidedBy,
    Point2 Centre, int FirstLine, int LastLine, ImmutableArray<TaperedStep> Steps)
{
    /// <summary>0 for the lowest turn.</summary>
    public required int Index { get; init; }

    /// <summary>The turn as the job has it; two quarter turns that are one half turn put together.</summary>
    public required Turn Turn { get; init; }

    /// <summary>The frame it was set out in.</summary>
    public required TurnFrame Frame { get; init; }

    /// <summary>The lengths it was set out with, in its frame.</summary>
    public required TurnSite Site { get; init; }

    /// <summary>Ids of its newels, the lower first: one, or two for a half landing round a well.</summary>
    public required ImmutableArray<string> Newels { get; init; }

    /// <summary>Ids of the newels in its outer corners, where it is open there.</summary>
    public required ImmutableArray<string> OuterNewels { get; init; }

    /// <summary>Radius of the walking line's arc, mm.</summary>
    public double WalkingRadius => Site.Walking;

    /// <summary>Whether its two strings pass one another side by side at one newel: a half turn round a well that the newel fills.</summary>
    public bool HasStringsSideBySide => Site is { Quarters: 2, Between: 0 } && Turn.Well != 0 && (Kind == TurnKind.Landing || Turn.Well > 0);

    /// <summary>The walking line through the turn, in its frame, from the first riser to the last.</summary>
    public WalkingPath Path => WalkingPath.Of(Site, FirstRiser, LastRiser);

    /// <summary>Mirrored in the y axis.</summary>
    public TurnPlan Mirrored() => this with { Centre = Centre.Mirrored, Frame = Frame.Mirrored() };
}
