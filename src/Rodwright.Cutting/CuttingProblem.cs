using System.Collections.Immutable;

namespace Rodwright.Cutting;

/// <summary>
/// Which boards to take, and what to cut from each, at the least cost. A board is used whole, or ripped along its whole length into strips; every strip is then
/// cross-cut, and a piece narrower than its strip is ripped to width by itself.
/// </summary>
public sealed record CuttingProblem
{
    /// <summary>A problem over given pieces and boards.</summary>
    /// <exception cref="ArgumentException">A length or quantity is not more than 0, a width, cost or saw's loss is less than 0, or a number is beyond what can be reckoned with.</exception>
    public CuttingProblem(ImmutableArray<CutPiece> pieces, ImmutableArray<StockBoard> stock, Saw saw)
    {
        ArgumentNullException.ThrowIfNull(saw);
        if (pieces.Any(p => p.Length is <= 0 or > Largest || p.Width is < 0 or > Largest || p.Quantity is <= 0 or > MostPieces)) throw new ArgumentException("a piece has a length, a width and a quantity", nameof(pieces));
        if (pieces.Sum(p => (long)p.Quantity) > MostPieces) throw new ArgumentException("too many pieces for one plan", nameof(pieces));
        if (stock.Any(s => s.Length is <= 0 or > Largest || s.Width is < 0 or > Largest || s.Cost is < 0 or > LargestCost || s.Quantity is < 0)) throw new ArgumentException("a board has a length, a width and a cost", nameof(stock));
        if (saw.Kerf is < 0 or > Largest || saw.EndTrim is < 0 or > Largest || saw.EdgeTrim is < 0 or > Largest) throw new ArgumentException("a saw takes nothing or something", nameof(saw));
        (Pieces, Stock, Saw) = (pieces, stock, saw);
    }

    /// <summary>Greatest length or width.</summary>
    public const long Largest = 10_000_000;

    /// <summary>Greatest cost of one board.</summary>
    public const long LargestCost = 1_000_000_000;

    /// <summary>Most pieces of one problem.</summary>
    public const int MostPieces = 100_000;

    /// <summary>What is wanted.</summary>
    public ImmutableArray<CutPiece> Pieces { get; }

    /// <summary>What there is to cut it from.</summary>
    public ImmutableArray<StockBoard> Stock { get; }

    /// <summary>What sawing takes.</summary>
    public Saw Saw { get; }
}
