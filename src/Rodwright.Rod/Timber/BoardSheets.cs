using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Timber;

/// <summary>The board plan drawn board by board, all at one scale, with the order of the cuts.</summary>
internal static class BoardSheets
{
    private const double Apart = 4; // between boards, mm of paper
    private const double LeastHeight = 4.6; // of a strip on paper: narrower ones are drawn wider, so that marks can be read

    public static IReadOnlyList<Sheet> Make(RodJob rod, BoardPlan plan)
    {
        var boards = plan.Boards.ToList();
        if (boards.Count == 0) return [];
        var words = new SheetWords("board-plan", "Board plan", "board plan", Note: "Sawn sizes. Narrow boards are drawn wider than they are");
        var longest = boards.Max(b => b.Length);
        var start = SheetStart.For(rod, words, l => new(longest, boards.Max(b => b.Width), 0, 0, 3 * l.Words, 3 * l.Words));
        var pages = new List<List<Mark>>();
        var y = double.NegativeInfinity;
        foreach (var board in boards)
        {
            var picture = new BoardPicture(plan, board, start.Scale.Factor, start.Lettering.Words, LeastHeight);
            var height = Heading(start) + picture.Height;
            if (y - height < start.View.MinY)
            {
                pages.Add([]);
                y = start.View.MaxY;
            }
            pages[^1].AddRange(Headed(picture, start, y));
            y -= height + Apart;
        }
        return [.. pages.Select((marks, i) => start.Finish([.. marks, .. Notes(rod, plan, start)]) with
        {
            Name = pages.Count == 1 ? words.Name : $"{words.Name}-{Number.Print(i + 1, 0)}",
            Title = pages.Count == 1 ? words.Title : $"{words.Title}, {Number.Print(i + 1, 0)}",
        })];
    }

    private static IEnumerable<Mark> Notes(RodJob rod, BoardPlan plan, SheetStart start)
    {
        var shop = plan.List.Shop;
        var sections = string.Join("; ", plan.Sections.Select(s => $"{s.Material} {rod.Units.Print(s.Thickness)}: {Costing.Money(shop, s.Cost)}, {s.Claim}"));
        var text = $"From {shop.Name}. Trim each end by {rod.Units.Print(shop.Saw.EndTrim)}, rip the whole length where strips are shown, then cut off from the left in the order of the figures; the kerf is {rod.Units.Print(shop.Saw.Kerf)}. "
            + (plan.Boards.Any(b => b.Strips.Any(s => s.Cuts.Any(c => !c.Nested.IsEmpty))) ? "Pieces drawn with slanted ends lie head to tail: cut the two off together, part them along the slant, then rip to width what is narrower than its strip. " : "")
            + $"Hatched: left over.\n{sections}.";
        foreach (var height in (double[])[start.Lettering.Words, 2.2, 1.8])
        {
            var flow = FlowText.Draw(new(start.Panel.MinX, start.Panel.MaxY), start.Panel.Width, text, height);
            if (flow.Height > start.Panel.Height && height > 1.8) continue;
            return flow.Marks;
        }
        return [];
    }

    /// <summary>A board under its heading.</summary>
    private static IEnumerable<Mark> Headed(BoardPicture picture, SheetStart start, double top)
    {
        var (left, size) = (start.View.MinX, start.Lettering.Words);
        var (head, large) = TextFit.Within(picture.Title, 40, size, bold: true);
        var title = new TextMark(new(left, top - size * 1.3), head, large, Layer.Lettering, bold: true);
        var (words, height) = TextFit.Within(picture.Words, start.View.Width - title.Width - 4, size);
        return [title, new TextMark(new(left + title.Width + 4, top - size * 1.3), words, height, Layer.Lettering), .. picture.Draw(new(left, top - Heading(start)))];
    }

    private static double Heading(SheetStart start) => 2.2 * start.Lettering.Words;
}
