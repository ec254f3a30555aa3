using Rodwright.Cutting.Models;

namespace Rodwright.Cutting.Search;

/// <summary>What is counted where the search divides.</summary>
internal enum Counted
{
    /// <summary>Boards of a set of stocks.</summary>
    Stock,

    /// <summary>Boards ripped in one way.</summary>
    Ripping,

    /// <summary>Pieces of one item left uncut.</summary>
    Shortage,

    /// <summary>Pieces of one item that begin at one place of the strips of one class.</summary>
    Place,
}

/// <summary>A count that is held at most, or at least, at a whole number.</summary>
/// <param name="What">What is counted.</param>
/// <param name="Index">Which set of stocks, ripping or item.</param>
/// <param name="Class">For a place, the class of the strips.</param>
/// <param name="At">For a place, where it is.</param>
/// <param name="IsLeast">At least; else at most.</param>
/// <param name="Limit">The number.</param>
internal sealed record Branch(Counted What, int Index, int Class, int At, bool IsLeast, int Limit)
{
    /// <summary>Whether a column counts, once.</summary>
    public bool Counts(Model model, Column column) => What switch
    {
        Counted.Stock => column.Stock(model) is >= 0 and var stock && model.Sets[Index][stock],
        Counted.Ripping => column.Ripping == Index,
        Counted.Shortage => column.Shortage == Index,
        _ => column.Lane?.Class == Class && column.BeginsAt(model, Index, At),
    };
}
