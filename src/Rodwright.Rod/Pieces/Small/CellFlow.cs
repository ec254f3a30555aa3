using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Pieces.Small;

/// <summary>Sets small pieces side by side in columns of one width, line under line, all at one scale: each with its mark, its words and its views below them.</summary>
internal static class CellFlow
{
    private const double Apart = 8; // between columns, mm
    private const double Between = 4; // between lines, mm
    private const double Legible = 2.5; // the smallest scale, 1 to this, that is taken to save paper
    private const int Few = 2; // sheets that are no waste

    /// <summary>The sheets, at the largest scale that needs few of them; none when there are no pieces.</summary>
    /// <param name="rod">Job and paper. The scale wished for is not asked: at 1:10 a wedge is not seen.</param>
    /// <param name="words">Names.</param>
    /// <param name="cells">The pieces, for a lettering.</param>
    /// <param name="notes">Written in the panel.</param>
    public static IEnumerable<Sheet> Sheets(RodJob rod, SheetWords words, Func<SheetLettering, IReadOnlyList<PieceRow>> cells, string notes)
    {
        var (start, pages) = Begin(rod, words, cells);
        return pages.Select((page, i) => start.Finish([.. page.SelectMany(p => Draw(start, p)), .. PiecePanel.Draw(start, rod.Stair, [.. page.SelectMany(p => p.Cell.Ids)], notes)]) with
        {
            Name = pages.Count == 1 ? words.Name : $"{words.Name}-{Number.Print(i + 1, 0)}",
            Title = pages.Count == 1 ? words.Title : $"{words.Title}, {Number.Print(i + 1, 0)}",
        });
    }

    private sealed record Set(PieceRow Cell, double Left, double Top, double Width, double Deep);

    private static (SheetStart Start, IReadOnlyList<IReadOnlyList<Set>> Pages) Begin(RodJob rod, SheetWords words, Func<SheetLettering, IReadOnlyList<PieceRow>> cells)
    {
        (SheetStart Start, IReadOnlyList<IReadOnlyList<Set>> Pages)? last = null;
        foreach (var scale in SheetScales.All(rod.Units))
        {
            if (last is { Start.Fits: true } && scale.Ratio > Legible) break;
            var start = SheetStart.At(rod, words, l => Need(cells(l), l, scale.Factor), scale);
            last = (start, Pages(start, cells(start.Lettering)));
            if (start.Fits && last.Value.Pages.Count <= Few) break;
        }
        return last!.Value;
    }

    private static ViewNeed Need(IReadOnlyList<PieceRow> cells, SheetLettering lettering, double scale) => cells.Count == 0 ? new(1, 1) : new(
        cells.Max(c => c.Need.Width), cells.Max(c => c.Need.Height), cells.Max(c => c.Need.Left), cells.Max(c => c.Need.Right),
        cells.Max(c => c.Need.Top + Head(c, lettering, Wide(c, scale))), cells.Max(c => c.Need.Bottom));

    private static double Wide(PieceRow cell, double scale) => cell.Need.Left + cell.Need.Width * scale + cell.Need.Right;

    private static double Head(PieceRow cell, SheetLettering lettering, double width) =>
        lettering.Mark * 1.3 + 1 + FlowText.HeightOf(FlowText.Wrap(cell.Words, width, lettering.Words).Count, lettering.Words) + 2;

    private static List<IReadOnlyList<Set>> Pages(SheetStart start, IReadOnlyList<PieceRow> cells)
    {
        if (cells.Count == 0) return [];
        var (view, scale) = (start.View, start.Scale.Factor);
        var columns = Math.Clamp((int)((view.Width + Apart) / (cells.Max(c => Wide(c, scale)) + Apart) + 1e-6), 1, cells.Count);
        var width = (view.Width - (columns - 1) * Apart) / columns;
        var pages = new List<List<Set>>();
        var y = double.NegativeInfinity;
        foreach (var line in cells.Chunk(columns))
        {
            // Views of one line stand level, under the longest words.
            var head = line.Max(c => Head(c, start.Lettering, width) + c.Need.Top);
            var deep = head + line.Max(c => c.Need.Height * scale + c.Need.Bottom);
            if (y - deep < view.MinY - 0.02)
            {
                pages.Add([]);
                y = view.MaxY;
            }
            for (var i = 0; i < line.Length; i++) pages[^1].Add(new(line[i], view.MinX + i * (width + Apart), y, width, head + line[i].Need.Height * scale));
            y -= deep + Between;
        }
        return [.. pages];
    }

    private static IEnumerable<Mark> Draw(SheetStart start, Set set)
    {
        var (cell, lettering) = (set.Cell, start.Lettering);
        var (text, height) = TextFit.Within(cell.Mark, set.Width, lettering.Mark, bold: true);
        yield return new TextMark(new(set.Left, set.Top - lettering.Mark), text, height, Layer.Lettering, bold: true);
        foreach (var mark in FlowText.Draw(new(set.Left, set.Top - lettering.Mark * 1.4 - 1), set.Width, cell.Words, lettering.Words).Marks) yield return mark;
        foreach (var mark in cell.Draw(new(start.Scale, Point2.Origin, new(set.Left + cell.Need.Left, set.Top - set.Deep)))) yield return mark;
    }
}
