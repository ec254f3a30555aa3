using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Joinery.Timber;

/// <summary>A board, or a sheet, and how it is cut. Lengths in mm.</summary>
/// <param name="Number">Its place in the plan, from 1.</param>
/// <param name="Material">Timber or sheet material.</param>
/// <param name="Length">Along the grain.</param>
/// <param name="Width">Across it.</param>
/// <param name="Thickness">Sawn.</param>
/// <param name="Offcut">Id of the offcut it is; empty for one that is bought.</param>
/// <param name="Price">What it costs; 0 for an offcut.</param>
/// <param name="Strips">Ripped into these, from one edge; one strip where it is not ripped.</param>
public sealed record PlannedBoard(int Number, string Material, double Length, double Width, double Thickness, string Offcut, double Price, ImmutableArray<PlannedStrip> Strips)
{
    /// <summary>Whether it is bought.</summary>
    public bool IsBought => Offcut.Length == 0;

    /// <summary>Whether it is ripped along its whole length.</summary>
    public bool IsRipped => Strips.Length > 1 || Strips[0].Width < Width - Tolerance.Same;
}

/// <summary>A strip of a board.</summary>
/// <param name="From">Its near edge, from the board's edge.</param>
/// <param name="Width">Its width.</param>
/// <param name="Cuts">The pieces along it, in the order they are cut.</param>
/// <param name="Left">What is left at its far end, trimmed.</param>
public sealed record PlannedStrip(double From, double Width, ImmutableArray<PlannedCut> Cuts, double Left);

/// <summary>A piece on a board.</summary>
/// <param name="Wood">The piece.</param>
/// <param name="From">Where it begins, from the board's end as it lies.</param>
/// <param name="To">Where it ends.</param>
public sealed record PlannedCut(Wood Wood, double From, double To)
{
    /// <summary>Its outline where it lies head to tail with its neighbour, from where it begins and from the strip's near edge, where a narrower one lies that is ripped to width after; empty where it is cut off square.</summary>
    public ImmutableArray<Point2> Nested { get; init; } = [];
}
