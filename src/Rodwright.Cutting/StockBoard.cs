namespace Rodwright.Cutting;

/// <summary>A board that can be taken from the rack or bought.</summary>
/// <param name="Id">What the caller calls it.</param>
/// <param name="Length">Along the grain; more than 0.</param>
/// <param name="Width">Across the grain; 0 for every piece and board where only lengths count.</param>
/// <param name="Cost">What taking one costs, in a whole unit that the caller chooses; 0 for an offcut that is already paid for.</param>
/// <param name="Quantity">How many there are; null where more can be had.</param>
public sealed record StockBoard(string Id, long Length, long Width, long Cost, int? Quantity = null);
