using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Paper;

/// <summary>
/// Cuts a true-size sheet into pages that a small printer can print. What is cut up is the drawing; in place of the sheet's frame and title
/// block every page has its own number, its neighbours' numbers, both check bars and a key plan.
/// </summary>
public static class Tiling
{
    private const double Breath = 3; // shown round the outermost marks, mm

    /// <summary>The pages of a sheet on a paper, whichever way up needs fewer of them; a drawing that fits one page is one tile, bars and all.</summary>
    /// <exception cref="ArgumentException">The paper is too small (see <see cref="TileGrid.IsLargeEnough"/>).</exception>
    public static SheetSet Cut(Sheet sheet, PaperSize paper)
    {
        var grid = GridFor(sheet, paper);
        var flat = FlatMarks.Of(sheet.Marks);
        return new(sheet.Name + "-tiles", sheet.Title, grid.Tiles.Select(tile => Page(sheet, grid, tile, flat)));
    }

    /// <summary>How <see cref="Cut"/> divides a sheet.</summary>
    /// <exception cref="ArgumentException">The paper is too small.</exception>
    public static TileGrid GridFor(Sheet sheet, PaperSize paper)
    {
        var extent = ExtentOf(sheet);
        var standing = new TileGrid(extent, paper.Portrait);
        var lying = new TileGrid(extent, paper.Landscape);
        return lying.Tiles.Length < standing.Tiles.Length ? lying : standing;
    }

    /// <summary>What of a sheet is cut up: its drawing with a little room round it; the paper, when nothing is drawn.</summary>
    public static Box2 ExtentOf(Sheet sheet)
    {
        var bounds = Mark.BoundsOf(sheet.Marks);
        return bounds.IsEmpty ? new(0, 0, sheet.Paper.Width, sheet.Paper.Height) : bounds.Grown(Breath);
    }

    private static Sheet Page(Sheet sheet, TileGrid grid, Tile tile, IReadOnlyList<(Mark Mark, Box2? Window)> flat)
    {
        var shift = Placement.Shift(tile.Shift);
        var seen = new List<Mark>();
        foreach (var (mark, window) in flat)
        {
            var b = mark.Bounds;
            var w = tile.Window;
            if (b.IsEmpty || b.MinX > w.MaxX || b.MaxX < w.MinX || b.MinY > w.MaxY || b.MaxY < w.MinY) continue;
            var moved = shift.Map(mark);
            seen.Add(window is { } inner ? new ClipMark(shift.Map(inner), [moved]) : moved);
        }
        var marks = new List<Mark> { new ClipMark(TileGrid.WindowOn(grid.Page), seen) };
        marks.AddRange(TileFurniture.Draw(sheet, grid, tile));
        return new Sheet
        {
            Name = $"{sheet.Name}-tile-{Number.Print(tile.Number, 0).PadLeft(2, '0')}",
            Title = $"{sheet.Title}, tile {Number.Print(tile.Number, 0)} of {Number.Print(grid.Tiles.Length, 0)}",
            Paper = grid.Page,
            Scale = sheet.Scale,
            Units = sheet.Units,
            Marks = [.. marks],
            TrueSize = true,
        };
    }
}
