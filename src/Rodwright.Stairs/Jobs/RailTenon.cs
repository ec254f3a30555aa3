namespace Rodwright.Stairs.Jobs;

/// <summary>
/// The stub tenon of a handrail in a newel: central, level, draw-bored, shouldered at the top edge (trade-practice.md 4c). Draw and the space at the mortice's bottom are those of the strings' tenons.
/// </summary>
public sealed record RailTenon
{
    /// <summary>Thickness, mm; default 20 (common practice).</summary>
    public double Thickness { get; init; } = 20;

    /// <summary>Length from the shoulder, mm; default 30 (common practice: a level tenon on a raking rail loses depth with its length).</summary>
    public double Length { get; init; } = 30;

    /// <summary>Shoulder left above the tenon at the rail's top edge, plumb, mm; default 5 (common practice).</summary>
    public double Shoulder { get; init; } = 5;

    /// <summary>Diameter of the peg, mm; default 9 (common practice).</summary>
    public double Peg { get; init; } = 9;

    /// <summary>Peg's centre from the shoulder, mm; default 12 (common practice), never more than half the tenon.</summary>
    public double PegBack { get; init; } = 12;
}
