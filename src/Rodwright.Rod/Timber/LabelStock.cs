using System.Collections.Immutable;
using Rodwright.Drawings.Paper;

namespace Rodwright.Rod.Timber;

/// <summary>A sheet of labels as stationers sell them. Lengths in mm.</summary>
/// <param name="Id">Paper and number of labels, for the command line: a4-24.</param>
/// <param name="Paper">The paper.</param>
/// <param name="Columns">Labels side by side.</param>
/// <param name="Rows">Labels one above the other.</param>
/// <param name="Width">Of a label.</param>
/// <param name="Height">Of a label.</param>
/// <param name="Left">From the paper's left edge to the first label.</param>
/// <param name="Top">From the paper's top edge to the first label.</param>
/// <param name="StepX">From a label's left edge to the next one's.</param>
/// <param name="StepY">From a label's top edge to the next one's.</param>
public sealed record LabelStock(string Id, PaperSize Paper, int Columns, int Rows, double Width, double Height, double Left, double Top, double StepX, double StepY)
{
    /// <summary>Usual sheets of labels (common practice).</summary>
    public static ImmutableArray<LabelStock> All { get; } =
    [
        new("a4-24", PaperSize.A4, 3, 8, 70, 37, 0, 0.5, 70, 37),
        new("a4-21", PaperSize.A4, 3, 7, 63.5, 38.1, 7.2, 15.1, 66, 38.1),
        new("a4-14", PaperSize.A4, 2, 7, 99.1, 38.1, 4.7, 15.1, 101.6, 38.1),
        new("letter-30", PaperSize.NorthAmerican.First(s => s.Name == "Letter"), 3, 10, 66.7, 25.4, 4.8, 12.7, 69.85, 25.4),
    ];

    /// <summary>The sheet of an id; null when there is none.</summary>
    public static LabelStock? Of(string id) => All.FirstOrDefault(s => s.Id == id);
}
