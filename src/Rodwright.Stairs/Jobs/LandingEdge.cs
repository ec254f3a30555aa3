namespace Rodwright.Stairs.Jobs;

/// <summary>
/// How the open edge of a landing or of the upper floor is finished under its base rail: a landing nosing, and the apron lining below it (trade-practice.md 4c). The nosing is as wide and as thick as other nosing pieces
/// and stands as far in front of the apron as a tread's in front of its riser.
/// </summary>
public sealed record LandingEdge
{
    /// <summary>Thickness of the apron lining, mm; default 9.</summary>
    public double Apron { get; init; } = 9;

    /// <summary>Packing between the trimmer and the apron, mm; default 6.</summary>
    public double Packing { get; init; } = 6;

    /// <summary>Depth of the apron below the nosing, mm; default 235, joists of 225 and a ceiling (common practice).</summary>
    public double Depth { get; init; } = 235;

    /// <summary>What the apron is made of, as it stands on the parts list; default "plywood".</summary>
    public string Material { get; init; } = "plywood";
}
