using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Pieces;

namespace Rodwright.Rod.Booklet;

/// <summary>Stages flowed down the columns of the booklet's pages; an A4 page has one column. Not for use from several threads.</summary>
internal sealed class BookletFlow
{
    private const double Gutter = 10;
    private const double Least = 165; // of a column, mm
    private const double Text = 2.5;
    private const double NumberWidth = 8;
    private const double BoxWidth = 9;
    private const double Pad = 1.5;
    private const double Between = 7; // two stages, mm
    private static readonly double[] Shares = [1, 0.85, 0.7];
    private readonly Sheet empty;
    private readonly List<(List<Mark> Marks, Scale? Scale)> pages = [([], null)];
    private readonly List<Waiting> waiting = [];
    private readonly int columns;
    private int column;
    private double y;

    public BookletFlow(Sheet empty)
    {
        this.empty = empty;
        columns = Math.Max(1, (int)((empty.Room.Width + Gutter) / (Least + Gutter)));
        Width = (empty.Room.Width - (columns - 1) * Gutter) / columns;
        y = empty.Room.MaxY;
    }

    /// <summary>Of a column, mm.</summary>
    public double Width { get; }

    private double Left => empty.Room.MinX + column * (Width + Gutter);

    private double WhatWidth => 0.56 * (Width - NumberWidth - BoxWidth);

    private double WhyWidth => Width - NumberWidth - BoxWidth - WhatWidth;

    /// <summary>What the booklet is, at the head of its first page.</summary>
    public void Cover(string job, string kind, IEnumerable<string> words)
    {
        Put(job, 5, bold: true);
        Put("The rod, step by step", 5, bold: false);
        Put(kind, Text, bold: false);
        foreach (var paragraph in words) Put(paragraph, Text, bold: false);
        y -= 3;
    }

    /// <summary>A stage: its heading, picture and sequence; kept on one column where that holds it.</summary>
    /// <param name="title">Its heading.</param>
    /// <param name="pictureOf">Its picture, at a share of its usual height.</param>
    /// <param name="rows">Its sequence.</param>
    public void Stage(string title, Func<double, BookletPicture> pictureOf, IReadOnlyList<BookletRow> rows) =>
        waiting.Add(new(title, pictureOf, rows, [.. rows.Select(HeightOf)]));

    private void Lay(Waiting stage, Waiting? next)
    {
        if (y < Top && !Shares.Any(s => Deep(stage, s) <= y - empty.Room.MinY)) Next();
        var left = y - empty.Room.MinY;
        // Smaller pictures that let two stages share a column are better than empty half pages.
        var share = y < Top || next is null ? 0 : Shares.FirstOrDefault(s => Deep(stage, s) + Between + Deep(next, s) <= left);
        if (share == 0) share = Shares.FirstOrDefault(s => Deep(stage, s) <= left);
        if (share == 0) share = 1;
        var picture = stage.PictureOf(share);
        Put(stage.Title, 3.5, bold: true);
        var box = new Box2(Left, y - picture.Height, Left + Width, y);
        pages[^1].Marks.AddRange(picture.Draw(box));
        if (pages[^1].Scale is null) pages[^1] = (pages[^1].Marks, picture.Scale);
        y = box.MinY - 2;
        Heads();
        for (var i = 0; i < stage.Rows.Count; i++)
        {
            if (y - stage.Heights[i] < empty.Room.MinY)
            {
                Next();
                Put($"{stage.Title}, continued", 3.5, bold: true);
                Heads();
            }
            Row(stage.Rows[i], stage.Heights[i]);
        }
        y -= Between;
    }

    private double Top => empty.Room.MaxY - 0.01;

    private static double Deep(Waiting stage, double share) =>
        3.5 * (1 + FlowText.Descent) + 2 + stage.PictureOf(share).Height + 2 + HeadRow + stage.Heights.Sum();

    private sealed record Waiting(string Title, Func<double, BookletPicture> PictureOf, IReadOnlyList<BookletRow> Rows, IReadOnlyList<double> Heights);

    /// <summary>The pages, called booklet-1 and so on.</summary>
    public IReadOnlyList<Sheet> Sheets()
    {
        for (var i = 0; i < waiting.Count; i++) Lay(waiting[i], i + 1 < waiting.Count ? waiting[i + 1] : null);
        waiting.Clear();
        return [.. pages.Select((page, i) => empty with
        {
            Name = $"booklet-{Number.Print(i + 1, 0)}", Title = $"Step by step, page {Number.Print(i + 1, 0)}",
            Marks = [.. page.Marks], Scale = page.Scale is { IsFull: false } scale ? scale : empty.Scale,
        })];
    }

    private const double HeadRow = Text + 2 * Pad;

    private IEnumerable<Drawings.Sheets.Table> Tables(BookletRow row) =>
        row.Entries.Count == 0 ? [] : PiecePanel.Across(WhatWidth + WhyWidth - 2 * Pad, Text, [.. row.Heads], row.Entries);

    private double HeightOf(BookletRow row)
    {
        var words = Math.Max(
            FlowText.HeightOf(FlowText.Wrap(row.What, WhatWidth - 2 * Pad, Text).Count, Text),
            FlowText.HeightOf(FlowText.Wrap(row.Why, WhyWidth - 2 * Pad, Text).Count, Text));
        return Math.Max(words, 4) + 2 * Pad + Tables(row).Sum(t => t.Height + 1.5) + (row.Entries.Count > 0 ? 1.2 : 0);
    }

    private void Heads()
    {
        var marks = pages[^1].Marks;
        marks.Add(new FillMark([Path2.Rectangle(Left, y - HeadRow, Left + Width, y)], 0.07, Layer.Lettering));
        var x = Left + NumberWidth;
        var line = y - Pad - Text;
        marks.Add(new TextMark(new(x + Pad, line), "What to do", Text, Layer.Lettering, bold: true));
        marks.Add(new TextMark(new(x + WhatWidth + Pad, line), "Why", Text, Layer.Lettering, bold: true));
        marks.Add(new TextMark(new(Left + Width - BoxWidth / 2, line), "Done", Text - 0.5, Layer.Lettering, HorizontalAnchor.Middle));
        y -= HeadRow;
        marks.Add(StrokeMark.Line(new(Left, y), new(Left + Width, y), Pens.Visible, Layer.Lettering));
    }

    private void Row(BookletRow row, double height)
    {
        var marks = pages[^1].Marks;
        var x = Left + NumberWidth;
        marks.Add(new TextMark(new(Left + NumberWidth - 2, y - Pad - Text), row.Number, Text, Layer.Lettering, HorizontalAnchor.End, bold: true));
        var what = FlowText.Draw(new(x + Pad, y - Pad), WhatWidth - 2 * Pad, row.What, Text);
        var why = FlowText.Draw(new(x + WhatWidth + Pad, y - Pad), WhyWidth - 2 * Pad, row.Why, Text);
        marks.AddRange(what.Marks);
        marks.AddRange(why.Marks);
        var table = y - Math.Max(Math.Max(what.Height, why.Height), 4) - Pad - 1.2;
        foreach (var t in Tables(row))
        {
            var piece = t.Draw(new(x + Pad, table), t.Height + 0.1);
            marks.AddRange(piece.Marks);
            table -= piece.Height + 1.5;
        }
        var middle = new Point2(Left + Width - BoxWidth / 2, y - Pad - 2);
        marks.Add(new StrokeMark(Path2.Rectangle(middle.X - 2, middle.Y - 2, middle.X + 2, middle.Y + 2), new(0.25, Dash.None), Layer.Lettering));
        y -= height;
        marks.Add(StrokeMark.Line(new(Left, y), new(Left + Width, y), Pens.Rule, Layer.Lettering));
    }

    private void Put(string words, double height, bool bold)
    {
        var text = FlowText.Draw(new(Left, y), Width, words, height, bold: bold);
        pages[^1].Marks.AddRange(text.Marks);
        y -= text.Height + (height > 3 ? 2 : 1.2);
    }

    private void Next()
    {
        column++;
        y = empty.Room.MaxY;
        if (column < columns) return;
        column = 0;
        pages.Add(([], null));
    }
}
