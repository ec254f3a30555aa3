namespace Rodwright.Stairs.Jobs;

/// <summary>
/// How the bottom step ends at an open side. A bull-nose stands in front of its newel, which stands back at the second riser, and ends in a quarter circle: a built-up block, the first riser thinned
/// to a veneer bent round it and drawn tight by wedges (trade-practice.md 4c).
/// </summary>
public sealed record BottomStep
{
    /// <summary>Its shape; default square.</summary>
    public BottomShape Shape { get; init; } = BottomShape.Square;

    /// <summary>Radius of the riser's face round the end, mm; null takes the going less half the newel, so that the quarter circle ends on the newel's face.</summary>
    public double? Radius { get; init; }

    /// <summary>Thickness the riser is thinned to where it bends, mm; default 2 (common practice: 1.5 to 3).</summary>
    public double Veneer { get; init; } = 2;

    /// <summary>Width of the slot for the pair of folding wedges, mm; default 12 (common practice).</summary>
    public double Wedges { get; init; } = 12;

    /// <summary>How far the block runs on behind the full thickness of the riser, for its screws, mm; default 60 (common practice).</summary>
    public double Lap { get; init; } = 60;

    /// <summary>How far past the spring the riser is thinned, mm: the slot, and as much again before it, so that the wedges draw on straight wood.</summary>
    public double Thinned => 2 * Wedges;

    /// <summary>Thickest layer the block is built up from, mm; default 63 (common practice: two or three layers, grain crossing).</summary>
    public double Layer { get; init; } = 63;
}

/// <summary>Shape of the bottom step's open end.</summary>
public enum BottomShape
{
    /// <summary>Square, its end in the bottom newel.</summary>
    Square,

    /// <summary>Rounded by a quarter circle in front of the newel.</summary>
    BullNose,
}
