namespace Rodwright.Cutting.Models;

/// <summary>
/// A problem made ready for reckoning: equal pieces are one item, lengths have their kerf added and are divided by what they have in common. Items are ordered by
/// width class and then longest first; a pattern lists its items in that order, so that every pattern has one path along the board.
/// </summary>
internal sealed class Model
{
    /// <summary>Length of each item with its kerf.</summary>
    public required int[] Weight { get; init; }

    /// <summary>How many of each are wanted.</summary>
    public required int[] Demand { get; init; }

    /// <summary>Width class of each item, 0 the narrowest.</summary>
    public required int[] Class { get; init; }

    /// <summary>Widths of the classes.</summary>
    public required long[] Widths { get; init; }

    /// <summary>Places in the problem of the pieces of each item.</summary>
    public required int[][] Pieces { get; init; }

    public required Lane[] Lanes { get; init; }

    public required Ripping[] Rippings { get; init; }

    /// <summary>Sets of stocks whose boards are counted together, the largest first: all, those of one width, those of one length, each by itself.</summary>
    public required bool[][] Sets { get; init; }

    /// <summary>Boards there are of each stock; null without limit.</summary>
    public required int?[] Limits { get; init; }

    /// <summary>Row of each stock's limit; -1 without.</summary>
    public required int[] LimitRow { get; init; }

    /// <summary>Rows before any branch is taken: items, limits, fed lanes.</summary>
    public required int Rows { get; init; }

    /// <summary>What leaving one piece of an item uncut costs in the reckoning: more than any plan; 0 where more boards can always be had.</summary>
    public required long[] Shortage { get; init; }

    /// <summary>Every total of costs is a whole number of these.</summary>
    public required long Step { get; init; }

    /// <summary>Pieces that fit no board there is, by place in the problem.</summary>
    public required int[] Hopeless { get; init; }

    /// <summary>Whether every way of ripping is among <see cref="Rippings"/>.</summary>
    public required bool IsWhole { get; init; }

    public int Items => Weight.Length;

    public int PiecesWanted => Demand.Sum();
}
