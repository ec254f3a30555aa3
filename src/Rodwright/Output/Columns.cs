namespace Rodwright.Output;

/// <summary>Plain columns for a terminal.</summary>
internal static class Columns
{
    /// <summary>Rows set out in columns, two spaces apart; the last column is left ragged. Columns named in <paramref name="right"/> line up on the right.</summary>
    public static void Write(TextWriter to, IReadOnlyList<string[]> rows, params int[] right)
    {
        if (rows.Count == 0) return;
        var widths = Enumerable.Range(0, rows[0].Length).Select(i => rows.Max(r => r[i].Length)).ToArray();
        foreach (var row in rows)
        {
            var cells = row.Select((cell, i) => right.Contains(i) ? cell.PadLeft(widths[i]) : i == row.Length - 1 ? cell : cell.PadRight(widths[i]));
            to.WriteLine("  " + string.Join("  ", cells).TrimEnd());
        }
    }
}
