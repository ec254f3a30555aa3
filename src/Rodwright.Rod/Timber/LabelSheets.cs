using System.Globalization;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;

namespace Rodwright.Rod.Timber;

/// <summary>A label for every piece: its mark, the job, its finished size, where it goes, and a QR code that leads to its sheet.</summary>
public static class LabelSheets
{
    private const double Pad = 3;

    /// <summary>The labels, on as many sheets as they take.</summary>
    /// <param name="rod">The stair.</param>
    /// <param name="list">Its cutting list.</param>
    /// <param name="stock">The sheet of labels.</param>
    /// <param name="set">The set of sheets the codes lead to.</param>
    /// <param name="link">What stands before the set's file name in the codes: an address or a folder; empty for none.</param>
    public static SheetSet Make(RodJob rod, CuttingList list, LabelStock stock, SheetSet set, string link = "")
    {
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentNullException.ThrowIfNull(list);
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(set);
        var each = stock.Columns * stock.Rows;
        var pages = PageOfParts(set, rod.Stair.Kit);
        var sheets = new List<Sheet>();
        foreach (var page in list.Pieces.Chunk(each))
        {
            var marks = page.SelectMany((piece, i) => Label(rod, piece, BoxOf(stock, i), Code(set, pages, piece.Part, link))).ToList();
            var name = "labels" + (list.Pieces.Length > each ? $"-{Number.Print(sheets.Count + 1, 0)}" : "");
            sheets.Add(new() { Name = name, Title = "Labels", Units = rod.Units, Paper = stock.Paper, HasScale = false, Marks = [.. marks] });
        }
        return new("labels", rod.Stair.Job.Title + ", labels", [.. sheets]);
    }

    /// <summary>Where a part's code leads: the page of the set that is about it.</summary>
    public static string Code(SheetSet set, IReadOnlyDictionary<string, int> pages, Part part, string link)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(pages);
        ArgumentNullException.ThrowIfNull(part);
        return $"{link}{set.Name}.pdf" + (pages.TryGetValue(part.Id, out var page) ? $"#page={Number.Print(page, 0)}" : "");
    }

    /// <summary>For each part the page that is about it: whose title block names its mark, or else that letters it largest; the first of several.</summary>
    /// <param name="set">The sheets.</param>
    /// <param name="kit">The parts.</param>
    public static IReadOnlyDictionary<string, int> PageOfParts(SheetSet set, Kit kit)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(kit);
        // Equal small pieces bear one mark.
        var marks = kit.Parts.ToLookup(p => p.Mark, p => p.Id);
        var best = new Dictionary<string, (int Page, double Size)>();
        for (var i = 0; i < set.Sheets.Length; i++)
        {
            var sheet = set.Sheets[i];
            Offer(sheet.Block?.Mark ?? "", double.MaxValue, i);
            foreach (var text in sheet.Marks.SelectMany(Flat).OfType<TextMark>().Where(t => t.Bold)) Offer(text.Text, text.Height, i);
        }
        return best.ToDictionary(b => b.Key, b => b.Value.Page);

        void Offer(string words, double size, int sheet)
        {
            foreach (var mark in MarksIn(words))
                foreach (var id in marks[mark])
                    if (!best.TryGetValue(id, out var known) || size > known.Size) best[id] = (sheet + 1, size);
        }
    }

    /// <summary>The marks that words name: each by itself, and those of a run, "T5 to T11".</summary>
    private static IEnumerable<string> MarksIn(string words)
    {
        var all = words.Split([' ', ',', ';', ':'], StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < all.Length; i++)
        {
            yield return all[i];
            if (i < 2 || all[i - 1] != "to" || all[i][0] != all[i - 2][0] || !int.TryParse(all[i - 2][1..], CultureInfo.InvariantCulture, out var from) || !int.TryParse(all[i][1..], CultureInfo.InvariantCulture, out var to)) continue;
            for (var n = from; n <= to; n++) yield return all[i][..1] + Number.Print(n, 0);
        }
    }

    private static IEnumerable<Mark> Flat(Mark mark) => mark switch
    {
        ClipMark clip => clip.Marks.SelectMany(Flat),
        GroupMark group => group.Marks.SelectMany(Flat).Prepend(mark),
        _ => [mark],
    };

    private static Box2 BoxOf(LabelStock stock, int i)
    {
        var (column, row) = (i % stock.Columns, i / stock.Columns);
        var (left, top) = (stock.Left + column * stock.StepX, stock.Paper.Height - stock.Top - row * stock.StepY);
        return new(left, top - stock.Height, left + stock.Width, top);
    }

    private static IEnumerable<Mark> Label(RodJob rod, ListedPiece piece, Box2 box, string code)
    {
        var (part, units) = (piece.Part, rod.Units);
        var inner = new Box2(box.MinX + Pad, box.MinY + Pad, box.MaxX - Pad, box.MaxY - Pad);
        var side = Math.Min(inner.Height, inner.Width * 0.4);
        yield return QrSquare.Draw(code, new(inner.MaxX - side, inner.Centre.Y - side / 2, inner.MaxX, inner.Centre.Y + side / 2));
        var width = inner.Width - side - 1;
        var pitch = inner.Height / 7;
        var y = inner.MaxY - 1.8 * pitch;
        yield return Line(part.Mark, Math.Min(6, 1.5 * pitch), true);
        foreach (var text in (string[])[part.Name, $"{units.Print(part.Blank.Length)} × {units.Print(part.Blank.Width)} × {units.Print(part.Blank.Thickness)}", Place(part), rod.Stair.Job.Title])
        {
            y -= 1.3 * pitch;
            yield return Line(text, Math.Min(2.5, 0.7 * pitch), false);
        }

        TextMark Line(string text, double height, bool bold)
        {
            var (words, size) = TextFit.Within(text, width, height, bold);
            return new(new(inner.MinX, y), words, size, Layer.Lettering, bold: bold);
        }
    }

    private static string Place(Part part) => part.Step > 0 ? $"step {Number.Print(part.Step, 0)}, {part.Material}" : part.Material;
}
