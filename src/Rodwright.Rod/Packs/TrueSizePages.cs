using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;

namespace Rodwright.Rod.Packs;

/// <summary>Pages for true-size sheets: a sheet the paper holds stays whole, a larger one is cut into tiles.</summary>
internal static class TrueSizePages
{
    public static IEnumerable<Sheet> Of(IEnumerable<Sheet> sheets, PaperStock paper) =>
        sheets.SelectMany(sheet => Holds(paper, sheet.Paper) ? [sheet] : Tiling.Cut(sheet, TilePaper(paper)).Sheets);

    /// <summary>How many pages of a paper, lying as it comes, a drawing takes at true size.</summary>
    public static int Lying(PaperStock paper, Box2 drawing)
    {
        var room = TileGrid.WindowOn(TilePaper(paper));
        // A roll is cut as long as the drawing, as far as a page goes.
        var page = paper.Height is null ? paper.PageFor(drawing.Width + TilePaper(paper).Width - room.Width, paper.Width) : TilePaper(paper);
        return new TileGrid(drawing, page).Tiles.Length;
    }

    private static bool Holds(PaperStock paper, PaperSize page)
    {
        var (small, large) = (Math.Min(page.Width, page.Height), Math.Max(page.Width, page.Height));
        if (paper.Height is not { } height) return page.Height <= paper.Width + Tolerance.Print && page.Width <= PaperStock.LongestPage;
        return small <= Math.Min(paper.Width, height) + Tolerance.Print && large <= Math.Max(paper.Width, height) + Tolerance.Print;
    }

    private static PaperSize TilePaper(PaperStock paper) => paper.Height is { } height
        ? new(paper.Name, paper.Width, height)
        : paper.PageFor(2 * paper.Width, paper.Width); // lengths of roll twice as long as it is wide
}
