namespace Rodwright.Drawings.Formats.Tables;

/// <summary>A table of a workbook.</summary>
/// <param name="Name">Name of its sheet, at most 31 signs, none of []:*?/\.</param>
/// <param name="Heading">Headings.</param>
/// <param name="Rows">Rows, a cell for each heading; a cell that is a plain decimal number is kept as a number.</param>
public sealed record XlsxTable(string Name, IReadOnlyList<string> Heading, IReadOnlyList<IReadOnlyList<string>> Rows);
