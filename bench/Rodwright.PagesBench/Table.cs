using System.Globalization;

namespace Rodwright.PagesBench;

/// <summary>Prints what was measured, limits beside it; as a table that reads well on a terminal and in a README.</summary>
public sealed class Table
{
    private static readonly string[] Heads = ["Measured", "Times", "Median, ms", "95 %, ms", "Worst, ms", "Limit"];
    private readonly List<string[]> rows = [];

    /// <summary>Adds a line.</summary>
    /// <param name="name">What was measured.</param>
    /// <param name="values">How long each took, ms.</param>
    /// <param name="limit">What it should keep to, in words; empty for none.</param>
    public void Add(string name, IEnumerable<double> values, string limit = "")
    {
        var series = new Series(values);
        rows.Add([name, series.Count.ToString(CultureInfo.InvariantCulture), Print(series.Median), Print(series.Most), Print(series.Worst), limit]);
    }

    /// <summary>Prints it, the machine above it.</summary>
    public void Print(TextWriter to)
    {
        var widths = Heads.Select((h, i) => rows.Select(r => r[i].Length).Append(h.Length).Max()).ToArray();
        to.WriteLine(Machine.Words);
        to.WriteLine();
        Row(Heads);
        Row([.. widths.Select((w, i) => i is > 0 and < 5 ? new string('-', w - 1) + ":" : new string('-', w))]);
        foreach (var row in rows) Row(row);

        void Row(string[] cells) => to.WriteLine("| " + string.Join(" | ", cells.Select((c, i) => i is > 0 and < 5 ? c.PadLeft(widths[i]) : c.PadRight(widths[i]))) + " |");
    }

    private static string Print(double value) => double.IsNaN(value) ? "" : value.ToString(value < 10 ? "0.0" : "0", CultureInfo.InvariantCulture);
}
