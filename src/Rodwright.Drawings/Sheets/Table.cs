using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>A table that wraps its cells and runs on from sheet to sheet with its heading repeated.</summary>
public sealed class Table
{
    private const double PadX = 1.5;
    private const double PadY = 1.3;
    private readonly ImmutableArray<ImmutableArray<IReadOnlyList<string>>> wrapped;
    private readonly ImmutableArray<IReadOnlyList<string>> heading;

    /// <summary>A table.</summary>
    /// <param name="columns">The columns, left to right.</param>
    /// <param name="rows">The cells, one for each column in each row.</param>
    /// <param name="textHeight">Height of the capitals, mm.</param>
    /// <exception cref="ArgumentException">A row has not one cell for each column.</exception>
    public Table(IEnumerable<TableColumn> columns, IEnumerable<IReadOnlyList<string>> rows, double textHeight = 2.5)
    {
        Columns = [.. columns];
        TextHeight = textHeight;
        heading = [.. Columns.Select(c => FlowText.Wrap(c.Title, c.Width - 2 * PadX, textHeight, bold: true))];
        wrapped = [.. rows.Select(Wrapped)];
    }

    /// <summary>The columns, left to right.</summary>
    public ImmutableArray<TableColumn> Columns { get; }

    /// <summary>Height of the capitals, mm.</summary>
    public double TextHeight { get; }

    /// <summary>How many rows there are, the heading not counted.</summary>
    public int RowCount => wrapped.Length;

    /// <summary>Width of all columns, mm.</summary>
    public double Width => Columns.Sum(c => c.Width);

    /// <summary>Height of the whole table in one piece, mm.</summary>
    public double Height => HeightOf(heading) + wrapped.Sum(HeightOf);

    /// <summary>Draws as many rows as fit, under a heading.</summary>
    /// <param name="topLeft">Top left corner, mm of paper.</param>
    /// <param name="height">Room downwards, mm.</param>
    /// <param name="firstRow">The first row to draw.</param>
    public TablePiece Draw(Point2 topLeft, double height, int firstRow = 0)
    {
        var used = HeightOf(heading);
        var next = firstRow;
        while (next < wrapped.Length && used + HeightOf(wrapped[next]) <= height) used += HeightOf(wrapped[next++]);
        if (next == firstRow && (firstRow < wrapped.Length || used > height)) return new([], 0, firstRow);
        var marks = new List<Mark>();
        var y = topLeft.Y;
        marks.Add(Tint(topLeft.X, y, HeightOf(heading)));
        y = DrawRow(marks, heading, topLeft.X, y, bold: true);
        for (var i = firstRow; i < next; i++)
        {
            marks.Add(StrokeMark.Line(new(topLeft.X, y), new(topLeft.X + Width, y), i == firstRow ? Pens.Visible : Pens.Rule, Layer.Lettering));
            y = DrawRow(marks, wrapped[i], topLeft.X, y, bold: false);
        }
        var x = topLeft.X;
        foreach (var column in Columns[..^1])
        {
            x += column.Width;
            marks.Add(StrokeMark.Line(new(x, topLeft.Y), new(x, y), Pens.Rule, Layer.Lettering));
        }
        marks.Add(new StrokeMark(Path2.Rectangle(topLeft.X, y, topLeft.X + Width, topLeft.Y), Pens.Visible, Layer.Lettering));
        return new(marks, topLeft.Y - y, next);
    }

    private ImmutableArray<IReadOnlyList<string>> Wrapped(IReadOnlyList<string> row) => row.Count == Columns.Length
        ? [.. row.Select((cell, i) => FlowText.Wrap(cell, Columns[i].Width - 2 * PadX, TextHeight))]
        : throw new ArgumentException($"a row has {row.Count} cells for {Columns.Length} columns");

    private FillMark Tint(double x, double y, double height) =>
        new([Path2.Rectangle(x, y - height, x + Width, y)], 0.07, Layer.Lettering);

    private double DrawRow(List<Mark> marks, ImmutableArray<IReadOnlyList<string>> cells, double x, double y, bool bold)
    {
        for (var i = 0; i < cells.Length; i++)
        {
            var column = Columns[i];
            var at = column.Align switch
            {
                HorizontalAnchor.Start => x + PadX,
                HorizontalAnchor.Middle => x + column.Width / 2,
                _ => x + column.Width - PadX,
            };
            for (var line = 0; line < cells[i].Count; line++)
            {
                if (cells[i][line].Length == 0) continue;
                var baseline = y - PadY - TextHeight * (1 + line * FlowText.Pitch);
                marks.Add(new TextMark(new(at, baseline), cells[i][line], TextHeight, Layer.Lettering, column.Align, bold: bold));
            }
            x += column.Width;
        }
        return y - HeightOf(cells);
    }

    // Descenders hang into the lower padding, so that one-line rows look centred.
    private double HeightOf(ImmutableArray<IReadOnlyList<string>> cells) =>
        2 * PadY + TextHeight * (1 + (cells.Max(c => c.Count) - 1) * FlowText.Pitch);
}
