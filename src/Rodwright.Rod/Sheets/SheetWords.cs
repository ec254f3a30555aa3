namespace Rodwright.Rod.Sheets;

/// <summary>What a sheet is called and what its title block says of the piece; the rest of the block follows from the job.</summary>
/// <param name="Name">File-safe name, unique in the pack: kebab-case.</param>
/// <param name="Title">Name for people, on the sheet list.</param>
/// <param name="Piece">What is drawn, as "wall string, lower flight".</param>
/// <param name="Mark">The piece's bench mark, as W1; empty for none.</param>
/// <param name="Note">A note for this sheet alone; empty for none.</param>
public sealed record SheetWords(string Name, string Title, string Piece, string Mark = "", string Note = "");
