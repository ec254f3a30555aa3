namespace Rodwright.Rod.Timber;

/// <summary>A table of the timber: printed on sheets and terminals, and written to files.</summary>
/// <param name="Name">Name of its file, without an ending.</param>
/// <param name="Title">What stands over it.</param>
/// <param name="Heading">Headings.</param>
/// <param name="Rows">Rows, a cell for each heading; lengths and prices as text.</param>
/// <param name="Numbers">Columns that are numbers.</param>
public sealed record TimberTable(string Name, string Title, IReadOnlyList<string> Heading, IReadOnlyList<IReadOnlyList<string>> Rows, IReadOnlyList<int> Numbers);
