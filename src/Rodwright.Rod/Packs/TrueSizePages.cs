using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;

namespace Rodwright.Rod.Packs;

/// <summary>Pages for true-size sheets: a sheet the paper holds stays whole, a larger one is cut into tiles.</summary>
internal static class TrueSizePages
{
    public static IEnumerable<Sheet> Of(IEnumerable<Sheet> sheets, PaperStock paper) =>
        sheets.SelectMany(sheet => Holds(paper, sheet.Paper) ? [sheet] : Tiling.Cut(sheet, TilePaper(paper)).Sheets);

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
