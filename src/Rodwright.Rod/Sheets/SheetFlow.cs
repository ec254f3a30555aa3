using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;

namespace Rodwright.Rod.Sheets;

/// <summary>Words and tables flowed down columns, and on to further sheets when the first is full. Not for use from several threads.</summary>
public sealed class SheetFlow
{
    private const double Gutter = 8;
    private readonly SheetStart start;
    private readonly List<List<Mark>> pages = [[]];
    private readonly int columns;
    private int column;
    private double y;

    /// <summary>A flow that begins at the top left of a sheet.</summary>
    public SheetFlow(SheetStart start)
    {
        this.start = start;
        Height = start.Lettering.Words;
        var room = Room;
        columns = Math.Clamp((int)((room.Width + Gutter) / (62 * Height + Gutter)), 1, 4);
        Width = (room.Width - (columns - 1) * Gutter) / columns;
        y = room.MaxY;
    }

    /// <summary>Width of a column, mm.</summary>
    public double Width { get; }

    /// <summary>Height of the running lettering, mm.</summary>
    public double Height { get; }

    private Box2 Room => start.Empty.Room;

    private double Left => Room.MinX + column * (Width + Gutter);

    /// <summary>A heading, kept with what follows.</summary>
    /// <param name="words">Its words.</param>
    /// <param name="with">Height of what must follow in the same column, mm.</param>
    public void Heading(string words, double? with = null)
    {
        var size = 1.4 * Height;
        if (y < Room.MaxY) y -= 1.6 * Height;
        Need(size + (with ?? 6 * Height));
        Put(FlowText.Draw(new(Left, y), Width, words, size, bold: true));
        y -= 0.9 * Height;
    }

    /// <summary>Height of a table of one-line rows with its heading, mm.</summary>
    public double HeightOfRows(int rows) => Math.Min(2.1 * Height * (rows + 1) + Height, 0.6 * Room.Height);

    /// <summary>A paragraph; one too long for the rest of a column starts in the next.</summary>
    public void Paragraph(string words, double? height = null, bool bold = false)
    {
        var size = height ?? Height;
        Need(FlowText.HeightOf(FlowText.Wrap(words, Width, size, bold).Count, size));
        Put(FlowText.Draw(new(Left, y), Width, words, size, bold: bold));
        y -= 0.8 * size;
    }

    /// <summary>A table as wide as the column; what does not fit goes on in the next, under its heading.</summary>
    /// <param name="columns">Titles, shares of the width, and whether figures.</param>
    /// <param name="rows">The cells.</param>
    public void Table(IReadOnlyList<(string Title, double Share, bool Figures)> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        var sum = columns.Sum(c => c.Share);
        var table = new Table(
            columns.Select(c => new TableColumn(c.Title, Width * c.Share / sum, c.Figures ? HorizontalAnchor.End : HorizontalAnchor.Start)), rows, Height);
        // A table that would be cut after a row or two, or that a column holds whole, starts in the next column.
        var fitsWhole = table.Height <= 0.6 * Room.Height;
        if (y < Room.MaxY && table.Height > y - Room.MinY && (fitsWhole || table.Draw(new(Left, y), y - Room.MinY).NextRow < 4)) Next();
        for (var row = 0; row < table.RowCount;)
        {
            var piece = table.Draw(new(Left, y), y - Room.MinY, row);
            if (piece.NextRow == row)
            {
                // A row deeper than a whole column could never be placed.
                if (y >= Room.MaxY - 0.01) break;
                Next();
                continue;
            }
            pages[^1].AddRange(piece.Marks);
            y -= piece.Height;
            row = piece.NextRow;
            if (row < table.RowCount) Next();
        }
        y -= Height;
    }

    /// <summary>A drawing of a given height across the column.</summary>
    /// <param name="height">mm of paper.</param>
    /// <param name="draw">Given its box.</param>
    public void Picture(double height, Func<Box2, IEnumerable<Mark>> draw)
    {
        Need(height);
        pages[^1].AddRange(draw(new(Left, y - height, Left + Width, y)));
        y -= height + Height;
    }

    /// <summary>The sheets: the first is called as the start is, further ones with "continued" and a number.</summary>
    public IReadOnlyList<Sheet> Sheets() =>
    [
        .. pages.Select((marks, i) => start.Finish(marks) with
        {
            Name = i == 0 ? start.Empty.Name : $"{start.Empty.Name}-{Number.Print(i + 1, 0)}",
            Title = i == 0 ? start.Empty.Title : $"{start.Empty.Title}, continued",
            Block = i == 0 ? start.Empty.Block : start.Empty.Block! with { Piece = $"{start.Empty.Block!.Piece}, continued" },
        }),
    ];

    private void Put(FlowText text)
    {
        pages[^1].AddRange(text.Marks);
        y -= text.Height;
    }

    private void Need(double height)
    {
        if (y - height < Room.MinY && y < Room.MaxY) Next();
    }

    private void Next()
    {
        column++;
        y = Room.MaxY;
        if (column < columns) return;
        column = 0;
        pages.Add([]);
    }
}
