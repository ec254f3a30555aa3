namespace Rodwright.Stairs.Jobs;

/// <summary>
/// How the open edge of a landing or of the upper floor is finished, under its base rail and round the surveyed well: a landing nosing, and the apron lining below it (trade-practice.md 4c). The nosing is as wide and as thick as other nosing pieces
/// and stands as far in front of the apron as a tread's in front of its riser.
/// </summary>
public sealed record LandingEdge
{
    /// <summary>Thickness of the apron lining, mm; default 9.</summary>
    public double Apron { get; init; } = 9;

    /// <summary>Packing between the trimmer and the apron, mm; default 6.</summary>
    public double Packing { get; init; } = 6;

    /// <summary>Depth of the apron below the nosing, mm; null takes it from the surveyed well: down to the ceiling and <see cref="BelowCeiling"/> past it. Where none was measured, 235: joists of 225 and a ceiling (common practice).</summary>
    public double? Depth { get; init; }

    /// <summary>How far the apron hangs below the ceiling round a surveyed well, mm; default 10 (common practice): it covers the joint.</summary>
    public double BelowCeiling { get; init; } = 10;

    /// <summary>What the apron is made of, as it stands on the parts list; default "plywood".</summary>
    public string Material { get; init; } = "plywood";

    /// <summary>Depth of an apron below its nosing, mm.</summary>
    /// <param name="job">The job.</param>
    /// <param name="ofUpperFloor">Whether it hangs from the upper floor, through which the well was measured; a half landing has a floor of its own.</param>
    public double DepthOf(Job job, bool ofUpperFloor) => Depth
        ?? (ofUpperFloor && job.Survey.Well is { } well ? well.Trimmer.Mean + BelowCeiling - job.Practice.Tread : job.Units.IsInches ? InchBalustrade.ApronDepth : 235);
}
