using System.Text;

namespace Rodwright.Drawings.Formats.Tables;

/// <summary>Comma-separated values after RFC 4180. Numbers come in already printed, by <see cref="Geometry.Number"/>, so no culture reaches the file.</summary>
public static class CsvWriter
{
    /// <summary>The text of a table: a heading, then rows, each ended by CR LF.</summary>
    /// <exception cref="ArgumentException">A row has not one cell for each heading.</exception>
    public static string Write(IReadOnlyList<string> heading, IEnumerable<IReadOnlyList<string>> rows)
    {
        var text = new StringBuilder();
        Append(text, heading);
        foreach (var row in rows)
        {
            if (row.Count != heading.Count) throw new ArgumentException($"a row has {row.Count} cells for {heading.Count} headings", nameof(rows));
            Append(text, row);
        }
        return text.ToString();
    }

    /// <summary>The same as a file: UTF-8 with the byte order mark that spreadsheets need to see it is not their local code page.</summary>
    public static WrittenFile WriteFile(string name, IReadOnlyList<string> heading, IEnumerable<IReadOnlyList<string>> rows) =>
        new(name + ".csv", "text/csv", (byte[])[0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Write(heading, rows))]);

    private static void Append(StringBuilder text, IReadOnlyList<string> cells)
    {
        for (var i = 0; i < cells.Count; i++)
        {
            if (i > 0) text.Append(',');
            if (cells[i].AsSpan().IndexOfAny("\",\r\n") < 0) text.Append(cells[i]);
            else text.Append('"').Append(cells[i].Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"');
        }
        text.Append("\r\n");
    }
}
