using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Templates;

/// <summary>
/// Sets a drawing down at full size: on the printer's own page where it fits, else on a sheet as large as it needs, which is then cut into tiles. Words
/// stand with the drawing, so that they stay with it on the tiles.
/// </summary>
internal static class TrueSheet
{
    private const double Breath = 6;

    /// <summary>A sheet of marks whose places are millimetres of timber.</summary>
    public static Sheet Of(RodJob rod, SheetWords words, IReadOnlyList<Mark> marks)
    {
        var box = Mark.BoundsOf(marks).Grown(Breath);
        var sheet = Pages(rod, box).Select(page => Empty(rod, words, page)).FirstOrDefault(s => Fits(s, box)) ?? Grown(rod, words, box);
        var place = Placement.Centred(box, sheet.Room, Scale.Full);
        // A whole millimetre, so that the sheet's own measure and the drawing's agree to read.
        var shift = new Placement(Scale.Full, Point2.Origin, new(Math.Round(place.Map(Point2.Origin).X), Math.Round(place.Map(Point2.Origin).Y)));
        return sheet with { Marks = [.. marks.Select(shift.Map)] };
    }

    private static IEnumerable<PaperSize> Pages(RodJob rod, Box2 box)
    {
        var stock = rod.Style.Paper;
        if (stock.Height is not { } height)
        {
            yield return stock.PageFor(Math.Max(box.Width + 60, 460), stock.Width);
            yield break;
        }
        yield return stock.PageFor(stock.Width, height);
        yield return stock.PageFor(height, stock.Width);
    }

    private static Sheet Grown(RodJob rod, SheetWords words, Box2 box)
    {
        var (width, height) = (Math.Max(Math.Ceiling(box.Width + 50), 320), Math.Ceiling(box.Height + 110));
        return Empty(rod, words, new(rod.Units.IsInches ? $"{Number.Print(width / Units.Inch)}x{Number.Print(height / Units.Inch)} in" : $"{Number.Print(width, 0)}x{Number.Print(height, 0)}", width, height));
    }

    private static Sheet Empty(RodJob rod, SheetWords words, PaperSize page) => new()
    {
        Name = words.Name, Title = words.Title, Units = rod.Units, Paper = page, Scale = Scale.Full, TrueSize = true, Marks = [], Block = SheetStart.BlockFor(rod, words),
    };

    private static bool Fits(Sheet sheet, Box2 box) => box.Width <= sheet.Room.Width + 1 && box.Height <= sheet.Room.Height + 1;
}
