using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Pieces;

/// <summary>Sets rows of pieces under one another, over as many sheets as they need, all at one scale.</summary>
internal static class RowFlow
{
    /// <summary>The sheets; none when there are no rows.</summary>
    /// <param name="rod">Job and paper.</param>
    /// <param name="words">Names.</param>
    /// <param name="rows">The rows, for a lettering.</param>
    /// <param name="notes">Written in the panel.</param>
    public static IEnumerable<Sheet> Sheets(RodJob rod, SheetWords words, Func<SheetLettering, IReadOnlyList<PieceRow>> rows, string notes)
    {
        var start = SheetStart.For(rod, words, l =>
        {
            var all = rows(l);
            return all.Count == 0 ? new(1, 1) : new(all.Max(r => r.Need.Width), all.Max(r => r.Need.Height),
                all.Max(r => r.Need.Left), all.Max(r => r.Need.Right), all.Max(r => r.Need.Top) + Heading(l), all.Max(r => r.Need.Bottom));
        });
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
            y -= height + 5;
        }
        return pages.Select((page, i) => start.Finish([.. page.Marks, .. PiecePanel.Draw(start, rod.Stair, page.Ids, notes)]) with
        {
            Name = pages.Count == 1 ? words.Name : $"{words.Name}-{Number.Print(i + 1, 0)}",
            Title = pages.Count == 1 ? words.Title : $"{words.Title}, {Number.Print(i + 1, 0)}",
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
