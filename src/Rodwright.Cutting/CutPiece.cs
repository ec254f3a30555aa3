namespace Rodwright.Cutting;

/// <summary>A rectangular piece that is wanted, its grain along its length. Lengths of a problem are whole numbers of one unit that the caller chooses.</summary>
/// <param name="Id">What the caller calls it; several pieces may share one.</param>
/// <param name="Length">Along the grain, as it leaves the saw; more than 0.</param>
/// <param name="Width">Across the grain, as it leaves the saw; 0 for every piece and board where only lengths count.</param>
/// <param name="Quantity">How many are wanted; more than 0.</param>
public sealed record CutPiece(string Id, long Length, long Width, int Quantity);
