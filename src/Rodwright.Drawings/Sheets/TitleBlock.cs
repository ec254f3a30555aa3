using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>
/// The title block, bottom right inside the frame, at most 180 wide (ISO 7200). Small paper gets a lower one with the same fields.
/// </summary>
public static class TitleBlock
{
    private const double Widest = 180;
    private const double Pad = 1.6;
    private const double CaptionHeight = 1.8;

    /// <summary>The box it takes on a paper.</summary>
    public static Box2 BoxOf(PaperSize paper)
    {
        var frame = SheetFrame.BoxOf(paper);
        var height = IsCompact(paper) ? 27.5 : 43;
        return new(frame.MaxX - Math.Min(Widest, frame.Width), frame.MinY, frame.MaxX, frame.MinY + height);
    }

    /// <summary>The block of a sheet; nothing for a sheet without words for it.</summary>
    public static IReadOnlyList<Mark> Draw(Sheet sheet)
    {
        if (sheet.Block is not { } words) return [];
        var box = BoxOf(sheet.Paper);
        var compact = IsCompact(sheet.Paper);
        var wide = sheet.Units.IsInches ? 6 : 0; // 1 1/2" = 1' 0" is longer than 1:8
        var marks = new List<Mark>
        {
            new FillMark([Path2.Rectangle(box.MinX, box.MinY, box.MaxX, box.MaxY)], 0, Layer.Frame),
        };
        var top = box.MaxY;
        if (compact)
        {
            Row(12, 5, (words.Piece.Length > 0 ? words.Piece : sheet.Title, "Piece", 134, 3.5, true), (words.Mark, "Mark", 46, 5, true));
            Row(9, 2.5, (words.Job, "Job", 62 - wide, 2.5, false), (sheet.ScaleWords, "Scale", 20 + wide, 2.5, false), (Counted(sheet), "Sheet", 24, 2.5, false),
                (words.Revision, "Revision", 18, 2.5, false), (words.Hand, "Hand", 26, 2.5, false), (words.Date, "Date", 30, 2.5, false));
        }
        else
        {
            Row(14, 5, (words.Piece.Length > 0 ? words.Piece : sheet.Title, "Piece", 128, 5, true), (words.Mark, "Mark", 52, 7, true));
            Row(11, 3.5, (words.Job, "Job", 128, 3.5, false), (words.Hand, "Hand", 52, 3.5, false));
            Row(10.5, 3.5, (sheet.ScaleWords, "Scale", 36, 3.5, false), (Counted(sheet), "Sheet", 50, 3.5, false),
                (words.Revision, "Revision", 42, 3.5, false), (words.Date, "Date", 52, 3.5, false));
        }
        Footer();
        marks.Add(new StrokeMark(Path2.Rectangle(box.MinX, box.MinY, box.MaxX, box.MaxY), Pens.Frame, Layer.Frame));
        return marks;

        void Row(double height, double largest, params ReadOnlySpan<(string Text, string Caption, double Share, double Height, bool Bold)> cells)
        {
            var x = box.MinX;
            foreach (var cell in cells)
            {
                var width = cell.Share * box.Width / Widest;
                if (x > box.MinX) marks.Add(StrokeMark.Line(new(x, top), new(x, top - height), Pens.Rule, Layer.Frame));
                marks.Add(new TextMark(new(x + Pad, top - 1.1 - CaptionHeight), cell.Caption, CaptionHeight, Layer.Frame));
                var (text, size) = TextFit.Within(cell.Text, width - 2 * Pad, Math.Min(largest + 2, cell.Height), cell.Bold);
                if (text.Length > 0)
                    marks.Add(new TextMark(new(x + Pad, top - height + 0.45 * (height - CaptionHeight - 1.1 - size)), text, size, Layer.Frame, bold: cell.Bold));
                x += width;
            }
            top -= height;
            marks.Add(StrokeMark.Line(new(box.MinX, top), new(box.MaxX, top), Pens.Rule, Layer.Frame));
        }

        void Footer()
        {
            var middle = (top + box.MinY) / 2;
            var (warning, size) = TextFit.Within(words.Warning, box.Width * 0.45, 2.5, bold: true);
            var left = new TextMark(new(box.MinX + Pad, middle), warning, size, Layer.Frame, vertical: VerticalAnchor.Middle, bold: true);
            if (warning.Length > 0) marks.Add(left);
            var (note, noteSize) = TextFit.Within(words.Note, box.Width - 2 * Pad - left.Width - 6, 2.5);
            if (note.Length > 0)
                marks.Add(new TextMark(new(box.MaxX - Pad, middle), note, noteSize, Layer.Frame, HorizontalAnchor.End, VerticalAnchor.Middle));
        }
    }

    private static string Counted(Sheet sheet) => $"{Number.Print(sheet.Number, 0)} of {Number.Print(sheet.Count, 0)}";

    private static bool IsCompact(PaperSize paper) => Math.Min(paper.Width, paper.Height) < PaperSize.A3.Width;
}
