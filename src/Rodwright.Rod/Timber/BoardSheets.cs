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
            var picture = new Picture(rod.Units, plan, board, start);
            if (y - picture.Height < start.View.MinY)
            {
                pages.Add([]);
                y = start.View.MaxY;
            }
            pages[^1].AddRange(picture.Draw(y));
            y -= picture.Height + Apart;
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
            + $"Hatched: left over.\n{sections}.";
        foreach (var height in (double[])[start.Lettering.Words, 2.2, 1.8])
        {
            var flow = FlowText.Draw(new(start.Panel.MinX, start.Panel.MaxY), start.Panel.Width, text, height);
            if (flow.Height > start.Panel.Height && height > 1.8) continue;
            return flow.Marks;
        }
        return [];
    }

    /// <summary>One board with its heading.</summary>
    private sealed class Picture
    {
        private readonly Units units;
        private readonly BoardPlan plan;
        private readonly PlannedBoard board;
        private readonly SheetStart start;
        private readonly double factor;
        private readonly double[] heights;
        private readonly double rest;
        private readonly bool isSheet;

        public Picture(Units units, BoardPlan plan, PlannedBoard board, SheetStart start)
        {
            (this.units, this.plan, this.board, this.start) = (units, plan, board, start);
            factor = start.Scale.Factor;
            isSheet = plan.Sections.Any(s => s.IsSheet && s.Boards.Contains(board));
            heights = [.. board.Strips.Select(s => Math.Max(LeastHeight, s.Width * factor))];
            rest = board.IsRipped ? Math.Max(0, board.Width - board.Strips[^1].From - board.Strips[^1].Width) * factor : 0;
        }

        private double Heading => 2.2 * start.Lettering.Words;

        public double Height => Heading + heights.Sum() + rest;

        public IEnumerable<Mark> Draw(double top)
        {
            var left = start.View.MinX;
            var (head, size) = TextFit.Within($"{(isSheet ? "Sheet" : "Board")} {Number.Print(board.Number, 0)}", 40, start.Lettering.Words, bold: true);
            var title = new TextMark(new(left, top - start.Lettering.Words * 1.3), head, size, Layer.Lettering, bold: true);
            yield return title;
            var (words, height) = TextFit.Within(Words(), start.View.Width - title.Width - 4, start.Lettering.Words);
            yield return new TextMark(new(left + title.Width + 4, top - start.Lettering.Words * 1.3), words, height, Layer.Lettering);
            var y = top - Heading;
            var outline = new Box2(left, y - heights.Sum() - rest, left + board.Length * factor, y);
            var number = 1;
            for (var i = 0; i < heights.Length; i++)
            {
                var strip = board.Strips[i];
                var from = left + plan.List.Shop.Saw.EndTrim * factor;
                foreach (var cut in strip.Cuts)
                {
                    var box = new Box2(left + cut.From * factor, y - heights[i], left + cut.To * factor, y);
                    yield return new StrokeMark(Rectangle(box), Pens.Visible, Layer.OutlineToCut, cut.Wood.Part);
                    foreach (var mark in Label(box, $"{Number.Print(number++, 0)}", cut)) yield return mark;
                    from = box.MaxX;
                }
                var spare = new Box2(from, y - heights[i], left + board.Length * factor, y);
                if (spare.Width > 1.5) foreach (var line in Hatch.Lines([Rectangle(spare)], 2.5, Angle.FromDegrees(45), Layer.Waste)) yield return line;
                y -= heights[i];
                if (i < heights.Length - 1 || rest > 0) yield return StrokeMark.Line(new(left, y), new(outline.MaxX, y), Pens.Visible, Layer.OutlineToCut);
            }
            if (rest > 1.5) foreach (var line in Hatch.Lines([Rectangle(new(left, y - rest, outline.MaxX, y))], 2.5, Angle.FromDegrees(45), Layer.Waste)) yield return line;
            yield return new StrokeMark(Rectangle(outline), Pens.Outline, Layer.Visible);
        }

        private string Words()
        {
            var stock = $"{TimberTables.StockName(units, board)}, {units.Print(board.Length)} long" + (board.IsBought ? $", {Costing.Money(plan.List.Shop, board.Price)}" : "");
            var rips = board.IsRipped ? $"; rip {string.Join(", ", board.Strips.GroupBy(s => s.Width).Select(g => g.Count() == 1 ? units.Print(g.Key) : $"{Number.Print(g.Count(), 0)} of {units.Print(g.Key)}"))}" : "";
            var left = board.Strips.Max(s => s.Left);
            return stock + rips + (left > 0 ? $"; {units.Print(left)} left" : "");
        }

        private IEnumerable<Mark> Label(Box2 box, string number, PlannedCut cut)
        {
            var size = Math.Min(start.Lettering.Words, box.Height * 0.6);
            foreach (var text in (string[])[$"{number}  {cut.Wood.Id}  {units.Print(cut.Wood.SawnLength)}" + (board.IsRipped || cut.Wood.SawnWidth > board.Width - 15 ? "" : $" x {units.Print(cut.Wood.SawnWidth)}"), $"{number}  {cut.Wood.Id}  {units.Print(cut.Wood.SawnLength)}", $"{number}  {cut.Wood.Id}", cut.Wood.Id])
            {
                if (Drawings.Fonts.Lettering.Width(text, size) > box.Width - 1.2) continue;
                yield return new TextMark(box.Centre, text, size, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, of: cut.Wood.Part);
                yield break;
            }
        }

        private static Path2 Rectangle(Box2 b) => Path2.Rectangle(b.MinX, b.MinY, b.MaxX, b.MaxY);
    }
}
