using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;
using Rodwright.Drawings.Paper;

namespace Rodwright.Rod.Tables;

/// <summary>A table under its own heading.</summary>
/// <param name="Title">The heading.</param>
/// <param name="Table">The table.</param>
internal sealed record TableSection(string Title, Table Table);

/// <summary>Flows tables over as many sheets as they need, in columns where they are narrow.</summary>
internal static class TableFlow
{
    private const double Gap = 6;

    /// <summary>The sheets; when there are several they are numbered in name and title.</summary>
    public static IReadOnlyList<Sheet> Sheets(RodJob rod, SheetWords words, Func<SheetLettering, IEnumerable<TableSection>> of)
    {
        var start = SheetStart.Written(rod, words, Scale.Full);
        var room = start.Empty.Room;
        var heading = start.Lettering.Words * 1.4;
        var pages = new List<List<Mark>> { new() };
        var (x, y, widest) = (room.MinX, room.MaxY, 0.0);
        foreach (var section in of(start.Lettering))
        {
            for (var row = 0; row < section.Table.RowCount;)
            {
                if (x + section.Table.Width > room.MaxX + 0.01) NextPage();
                var piece = section.Table.Draw(new(x, y - heading * 1.5), y - heading * 1.5 - room.MinY, row);
                // A heading with one row under it at the foot of a column reads badly: better begin anew.
                var few = piece.NextRow - row < Math.Min(3, section.Table.RowCount - row) && y < room.MaxY;
                if (piece.NextRow == row || few)
                {
                    if (y >= room.MaxY) throw new ArgumentException("the paper has no room for one row of a table");
                    NextColumn();
                    continue;
                }
                var (title, size) = TextFit.Within(row == 0 ? section.Title : section.Title + ", continued", section.Table.Width, heading, bold: true);
                pages[^1].Add(new TextMark(new(x, y - heading), title, size, Layer.Lettering, bold: true));
                pages[^1].AddRange(piece.Marks);
                widest = Math.Max(widest, section.Table.Width);
                y -= heading * 1.5 + piece.Height + Gap;
                row = piece.NextRow;
                if (row < section.Table.RowCount) NextColumn();
            }
        }
        return [.. pages.Select((marks, i) => Page(start, words, marks, i, pages.Count))];

        void NextColumn()
        {
            x += widest + Gap;
            (y, widest) = (room.MaxY, 0);
        }

        void NextPage()
        {
            if (pages[^1].Count == 0) throw new ArgumentException("the paper is too narrow for a table");
            pages.Add([]);
            (x, y, widest) = (room.MinX, room.MaxY, 0);
        }
    }

    private static Sheet Page(SheetStart start, SheetWords words, List<Mark> marks, int i, int count) => start.Finish(marks) with
    {
        Name = count == 1 ? words.Name : $"{words.Name}-{Number.Print(i + 1, 0)}",
        Title = count == 1 ? words.Title : $"{words.Title}, {Number.Print(i + 1, 0)}",
    };
}
