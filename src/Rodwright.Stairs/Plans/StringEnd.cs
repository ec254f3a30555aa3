namespace Rodwright.Stairs.Plans;

/// <summary>How a string ends.</summary>
/// <param name="Kind">What it meets.</param>
/// <param name="At">
/// Station s of the meeting, mm: the floor's riser face for a foot, the newel's centre for a newel, the room's corner for a corner, the face of the last
/// riser for a head.
/// </param>
/// <param name="Level">Height of the floor it stands on or arrives at, mm; for newels and corners the floor level below it.</param>
/// <param name="Newel">The newel's id; empty otherwise.</param>
public sealed record StringEnd(StringEndKind Kind, double At, double Level, string Newel = "");

/// <summary>What a string's end meets.</summary>
public enum StringEndKind
{
    /// <summary>Stands on a floor: plumb cut at skirting height, level cut on the floor.</summary>
    Foot,

    /// <summary>Tenoned into a newel.</summary>
    Newel,

    /// <summary>Runs through to the wall behind at the corner of the room.</summary>
    CornerThrough,

    /// <summary>Let into the face of the string that runs through.</summary>
    CornerLetIn,

    /// <summary>Hooks over the trimmer at an upper floor or landing.</summary>
    Head,
}
