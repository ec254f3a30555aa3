using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>One straight run of a side, between newels, corners of the room and floors: where a string stands, or only a wall beside landings.</summary>
/// <param name="Side">Left or right as one climbs.</param>
/// <param name="Face">Line of its visible face, station 0 at the leg's y = 0; of a run across a half turn, at its lower corner.</param>
/// <param name="Lower">Where it begins.</param>
/// <param name="Upper">Where it ends.</param>
/// <param name="Carries">Whether a string stands there.</param>
/// <param name="Leg">The leg it belongs to; null across a half turn.</param>
/// <param name="FirstRiser">The first riser that may end on it.</param>
/// <param name="LastRiser">The last.</param>
internal sealed record Run(Hand Side, Line2 Face, RunEnd Lower, RunEnd Upper, bool Carries, Leg? Leg, int FirstRiser, int LastRiser)
{
    /// <summary>Whether it is open rather than against a wall.</summary>
    public bool IsOpen { get; init; }

    /// <summary>Id of its string; given once all are known.</summary>
    public string Id { get; init; } = "";
}

/// <summary>How a run ends.</summary>
/// <param name="Kind">What it meets.</param>
/// <param name="At">Station along its face: the floor's riser face, the newel's centre or the corner.</param>
/// <param name="Newel">The newel's id; empty otherwise.</param>
/// <param name="StringAt">Station where its string ends: at a landing it does not go on to the corner.</param>
/// <param name="Level">Height of the floor met there, mm; 0 for newels and corners.</param>
internal sealed record RunEnd(RunEndKind Kind, double At, string Newel, double StringAt, double Level);

/// <summary>What a run's end meets.</summary>
internal enum RunEndKind
{
    /// <summary>The lower or the upper floor.</summary>
    Floor,

    /// <summary>A newel.</summary>
    Newel,

    /// <summary>The corner of the room, among tapered steps.</summary>
    Corner,

    /// <summary>The corner of the room beside a landing: the string ends where the landing begins.</summary>
    Landing,
}
