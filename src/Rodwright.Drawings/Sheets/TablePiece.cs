using Rodwright.Drawings.Marks;

namespace Rodwright.Drawings.Sheets;

/// <summary>As much of a table as fitted one place.</summary>
/// <param name="Marks">Its marks; none when not even one row fitted.</param>
/// <param name="Height">Height used, mm.</param>
/// <param name="NextRow">The first row still to draw; the number of rows when all are drawn.</param>
public sealed record TablePiece(IReadOnlyList<Mark> Marks, double Height, int NextRow);
