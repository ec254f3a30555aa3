using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Pieces;

/// <summary>Sets rows of pieces under one another, over as many sheets as they need, all at one scale.</summary>
internal static class RowFlow
{
    private const double Apart = 5; // between rows, mm
    private const double Legible = 5; // the smallest scale, 1 to this, that is taken to save paper

    /// <summary>The sheets; none when there are no rows.</summary>
    /// <param name="rod">Job and paper.</param>
    /// <param name="words">Names.</param>
    /// <param name="rows">The rows, for a lettering.</param>
    /// <param name="notes">Written in the panel.</param>
    public static IEnumerable<Sheet> Sheets(RodJob rod, SheetWords words, Func<SheetLettering, IReadOnlyList<PieceRow>> rows, string notes) => Sheets(rod, words, rows, _ => notes);

    /// <summary>The sheets, each with the notes its own pieces need; none when there are no rows.</summary>
    /// <param name="rod">Job and paper.</param>
    /// <param name="words">Names.</param>
    /// <param name="rows">The rows, for a lettering.</param>
    /// <param name="notes">Written in the panel, for the ids of the pieces on a sheet.</param>
    public static IEnumerable<Sheet> Sheets(RodJob rod, SheetWords words, Func<SheetLettering, IReadOnlyList<PieceRow>> rows, Func<IReadOnlyCollection<string>, string> notes)
    {
        var start = Begin(rod, words, rows);
        var list = rows(start.Lettering);
        var pages = new List<(List<Mark> Marks, List<string> Ids)>();
        var y = double.NegativeInfinity;
        foreach (var row in list)
        {
            var height = Heading(start.Lettering) + row.Need.Top + row.Need.Height * start.Scale.Factor + row.Need.Bottom;
            if (y - height < start.View.MinY - 0.02)
            {
                pages.Add(([], []));
                y = start.View.MaxY;
            }
            var (marks, ids) = pages[^1];
            marks.AddRange(Title(row, start, y));
            var left = start.View.MinX + Math.Max(row.Need.Left, (start.View.Width - row.Need.Width * start.Scale.Factor) / 2);
            marks.AddRange(row.Draw(new(start.Scale, Point2.Origin, new(left, y - height + row.Need.Bottom))));
            ids.AddRange(row.Ids);
            y -= height + Apart;
        }
        return pages.Select((page, i) => start.Finish([.. page.Marks, .. PiecePanel.Draw(start, rod.Stair, page.Ids, notes(page.Ids))]) with
        {
            Name = pages.Count == 1 ? words.Name : $"{words.Name}-{Number.Print(i + 1, 0)}",
            Title = pages.Count == 1 ? words.Title : $"{words.Title}, {Number.Print(i + 1, 0)}",
        });
    }

    /// <summary>Two rows to a sheet, so that pieces can be compared and paper is not wasted, unless that would make them small.</summary>
    private static SheetStart Begin(RodJob rod, SheetWords words, Func<SheetLettering, IReadOnlyList<PieceRow>> rows)
    {
        var (one, two) = (For(1), For(2));
        return two.Fits && (two.Scale.Ratio <= Legible || two.Scale.Ratio <= one.Scale.Ratio) ? two : one;

        SheetStart For(int count) => SheetStart.For(rod, words, l =>
        {
            var all = rows(l);
            if (all.Count == 0) return new(1, 1);
            var n = Math.Min(count, all.Count);
            var (above, below) = (all.Max(r => r.Need.Top) + Heading(l), all.Max(r => r.Need.Bottom));
            return new(all.Max(r => r.Need.Width), n * all.Max(r => r.Need.Height), all.Max(r => r.Need.Left), all.Max(r => r.Need.Right), n * above, n * below + (n - 1) * Apart);
        });
    }

    private static double Heading(SheetLettering lettering) => lettering.Mark + 4 + lettering.Figures;

    private static IEnumerable<Mark> Title(PieceRow row, SheetStart start, double top)
    {
        var baseline = top - start.Lettering.Mark - 1;
        var (text, height) = TextFit.Within(row.Mark, start.View.Width * 0.4, start.Lettering.Mark, bold: true);
        var mark = new TextMark(new(start.View.MinX, baseline), text, height, Layer.Lettering, bold: true);
        yield return mark;
        var x = start.View.MinX + mark.Width + 4;
        var (words, size) = TextFit.Within(row.Words, start.View.MaxX - x, start.Lettering.Title);
        yield return new TextMark(new(x, baseline), words, size, Layer.Lettering);
    }
}
