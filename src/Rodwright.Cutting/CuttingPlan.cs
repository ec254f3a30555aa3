using System.Collections.Immutable;

namespace Rodwright.Cutting;

/// <summary>Boards to take and how each is cut, with what can be said of how good the plan is.</summary>
/// <param name="Boards">Every board, one by one; the largest boards first.</param>
/// <param name="Uncut">Pieces, one by one, for which the stock does not suffice: the plan leaves as few as it can.</param>
/// <param name="Cost">Of all boards.</param>
/// <param name="Bound">No plan that leaves as few uncut costs less: a true bound, from exact arithmetic.</param>
/// <param name="IsProven">Whether no better plan exists.</param>
/// <param name="Work">What it took.</param>
public sealed record CuttingPlan(ImmutableArray<CutBoard> Boards, ImmutableArray<CutPiece> Uncut, long Cost, long Bound, bool IsProven, CuttingWork Work)
{
    /// <summary>Whether there is proven to be no plan such as <see cref="CuttingEffort.Below"/> asks for; false where nothing was asked.</summary>
    public bool IsRuledOut { get; init; }

    /// <summary>How much dearer it may be than the best there is, as a share of the bound; 0 when proven, infinite when the bound says nothing.</summary>
    public double Gap => IsProven ? 0 : Bound > 0 ? (double)(Cost - Bound) / Bound : double.PositiveInfinity;
}

/// <summary>A board of a plan.</summary>
/// <param name="Stock">Which board it is.</param>
/// <param name="Strips">The strips it is ripped into, from one edge to the other; one strip where it is not ripped.</param>
public sealed record CutBoard(StockBoard Stock, ImmutableArray<CutStrip> Strips);

/// <summary>One strip of a board and the pieces cut from it.</summary>
/// <param name="Width">Its width; the whole board's where it is not ripped.</param>
/// <param name="Pieces">From one end to the other, each with quantity 1; none where the strip is left over whole.</param>
/// <param name="Left">What is left behind the last piece and its saw cut, up to the board's trimmed end.</param>
public sealed record CutStrip(long Width, ImmutableArray<CutPiece> Pieces, long Left);

/// <summary>What a plan took to make.</summary>
/// <param name="Steps">Elementary steps of reckoning; the same on every machine.</param>
/// <param name="Patterns">Cutting patterns that were generated.</param>
/// <param name="Nodes">Branches that were looked into.</param>
public sealed record CuttingWork(long Steps, int Patterns, int Nodes);
