namespace Rodwright.Stairs.Jobs;

/// <summary>String tenons into newels. Proportions: trade-practice.md 4b (two thirds of the newel, thirds of the depth, draw bore 2).</summary>
public sealed record TenonPractice
{
    /// <summary>Thickness, mm; null takes the string's thickness less the housing's depth, so that the tenon clears the housings.</summary>
    public double? Thickness { get; init; }

    /// <summary>Length as a part of the newel's side; default two thirds.</summary>
    public double Part { get; init; } = 2.0 / 3;

    /// <summary>Length of the haunch in the gap between the twin tenons, mm; default 16.</summary>
    public double Haunch { get; init; } = 16;

    /// <summary>How much deeper a mortice is than its tenon is long, mm; default 2.</summary>
    public double MorticeClearance { get; init; } = 2;

    /// <summary>Wood left between two tenons that would meet in one newel, mm; default 3.</summary>
    public double Between { get; init; } = 3;

    /// <summary>A tenon shorter than this is a finding, mm; default 20.</summary>
    public double Least { get; init; } = 20;

    /// <summary>Diameter of the draw-bore peg, mm; default 12.</summary>
    public double Peg { get; init; } = 12;

    /// <summary>Peg centre from the shoulder, mm; default 20 (common practice), never more than half the tenon.</summary>
    public double PegBack { get; init; } = 20;

    /// <summary>How much nearer the shoulder the hole in the tenon is bored, mm; default 2.</summary>
    public double Draw { get; init; } = 2;
}
