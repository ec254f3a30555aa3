using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Pieces;

/// <summary>One piece, or several of one shape, on a sheet that carries more than one: a title and a view below it.</summary>
/// <param name="Mark">Marks of the pieces.</param>
/// <param name="Words">Name, number, size.</param>
/// <param name="Ids">Ids of the pieces.</param>
/// <param name="Need">The view and its strips for figures.</param>
/// <param name="Draw">Draws it where the placement puts the left lower corner of its board.</param>
internal sealed record PieceRow(string Mark, string Words, IReadOnlyList<string> Ids, ViewNeed Need, Func<Placement, IEnumerable<Mark>> Draw);
