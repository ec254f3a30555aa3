namespace Rodwright.Stairs.Jobs;

/// <summary>Wedges, glue blocks and pegs as pieces of their own: driven, rubbed in and counted (trade-practice.md 4a).</summary>
public sealed record SmallParts
{
    /// <summary>How much narrower a wedge is than its housing is deep, mm; default 1 (common practice).</summary>
    public double WedgeClear { get; init; } = 1;

    /// <summary>Glue blocks on each step; null takes 2 up to 900 clear, 3 up to 1200, and one more for each further 300.</summary>
    public double? Blocks { get; init; }

    /// <summary>Legs of a block's triangular section, mm; default 38.</summary>
    public double BlockSide { get; init; } = 38;

    /// <summary>Length of a block, mm; default 75.</summary>
    public double BlockLength { get; init; } = 75;

    /// <summary>Timber of wedges and pegs as it stands on the parts list; default "hardwood" (it shrinks less).</summary>
    public string Timber { get; init; } = "hardwood";

    /// <summary>How many blocks a step of a clear width gets.</summary>
    /// <param name="clear">Between the strings' faces, mm.</param>
    public int BlocksFor(double clear) => Blocks is { } given ? (int)given : clear <= 900 ? 2 : 3 + (int)Math.Ceiling(Math.Max(0, clear - 1200) / 300);
}
