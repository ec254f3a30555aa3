using System.Collections.Immutable;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Timber;

/// <summary>A part on the cutting list, with the wood it is made from.</summary>
/// <param name="Part">The part.</param>
/// <param name="Stock">Boards or sheet it is cut from.</param>
/// <param name="Woods">The pieces of wood: one, or the strips and layers it is glued up from, front or lowest first.</param>
/// <param name="Grain">Which way the grain runs, in bench words.</param>
/// <param name="Remark">Glue-up and where it comes from, in bench words; empty for nothing.</param>
public sealed record ListedPiece(Part Part, StockKind Stock, ImmutableArray<Wood> Woods, string Grain, string Remark)
{
    /// <summary>Whether it is glued up from several pieces.</summary>
    public bool IsGluedUp => Woods.Length > 1;
}

/// <summary>What a piece is cut from.</summary>
public enum StockKind
{
    /// <summary>Sawn boards.</summary>
    Board,

    /// <summary>Sheet goods.</summary>
    Sheet,

    /// <summary>What is left over: too small to be planned.</summary>
    Scrap,

    /// <summary>Nothing the shop has.</summary>
    None,
}

/// <summary>One piece of wood as it leaves the saw, grain along its length. Lengths in mm.</summary>
/// <param name="Id">The mark of its part, with a letter for each strip or layer: T3a.</param>
/// <param name="Part">Id of the part.</param>
/// <param name="Material">Timber or sheet material.</param>
/// <param name="Length">Finished.</param>
/// <param name="Width">Finished.</param>
/// <param name="Thickness">Finished.</param>
/// <param name="SawnLength">With the shop's allowances.</param>
/// <param name="SawnWidth">With the shop's allowances.</param>
/// <param name="SawnThickness">Of the board or sheet; what is wanted where the shop has none.</param>
public sealed record Wood(string Id, string Part, string Material, double Length, double Width, double Thickness, double SawnLength, double SawnWidth, double SawnThickness)
{
    /// <summary>What it may be sawn to where its ends are slanted; null for a piece that is cut off square.</summary>
    public SawnShape? Shape { get; init; }
}
