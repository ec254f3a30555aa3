using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Timber;

namespace Rodwright.Rod.Timber;

/// <summary>
/// One board as it is cut: strips from the top, pieces from the left with the figures of their order, hatched what is left over. Every piece carries the id of its part. The same
/// drawing is on the sheet and on the page.
/// </summary>
public sealed class BoardPicture
{
    private readonly BoardPlan plan;
    private readonly PlannedBoard board;
    private readonly double factor;
    private readonly double lettering;
    private readonly double[] heights;
    private readonly double rest;

    /// <summary>Makes the picture ready.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="board">One of its boards.</param>
    /// <param name="factor">Millimetres of paper for one of timber.</param>
    /// <param name="lettering">Height of the letters, mm of paper.</param>
    /// <param name="least">Height of a strip on paper below which it is drawn wider than it is, so that marks can be read.</param>
    public BoardPicture(BoardPlan plan, PlannedBoard board, double factor, double lettering, double least)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(board);
        (this.plan, this.board, this.factor, this.lettering) = (plan, board, factor, lettering);
        heights = [.. board.Strips.Select(s => Math.Max(least, s.Width * factor))];
        rest = board.IsRipped ? Math.Max(0, board.Width - board.Strips[^1].From - board.Strips[^1].Width) * factor : 0;
    }

    private Units Units => plan.List.Kit.Plan.Units;

    /// <summary>mm of paper.</summary>
    public double Width => board.Length * factor;

    /// <summary>mm of paper.</summary>
    public double Height => heights.Sum() + rest;

    /// <summary>"Board 3", "Sheet 1".</summary>
    public string Title => $"{(plan.Sections.Any(s => s.IsSheet && s.Boards.Contains(board)) ? "Sheet" : "Board")} {Number.Print(board.Number, 0)}";

    /// <summary>What it is and how it is ripped: "redwood 32 x 225, 3600 long, £20.70; rip 2 of 103; 640 left".</summary>
    public string Words
    {
        get
        {
            var stock = $"{TimberTables.StockName(Units, board)}, {Units.Print(board.Length)} long" + (board.IsBought ? $", {Costing.Money(plan.List.Shop, board.Price)}" : "");
            var rips = board.IsRipped ? $"; rip {string.Join(", ", board.Strips.GroupBy(s => s.Width).Select(g => g.Count() == 1 ? Units.Print(g.Key) : $"{Number.Print(g.Count(), 0)} of {Units.Print(g.Key)}"))}" : "";
            var left = board.Strips.Max(s => s.Left);
            return stock + rips + (left > 0 ? $"; {Units.Print(left)} left" : "");
        }
    }

    /// <summary>The marks.</summary>
    /// <param name="corner">Upper left corner of the board on the paper.</param>
    /// <param name="forScreen">Whether every piece is an area that can be pressed.</param>
    public IEnumerable<Mark> Draw(Point2 corner, bool forScreen = false)
    {
        var (left, y, number) = (corner.X, corner.Y, 1);
        var outline = new Box2(left, y - Height, left + Width, y);
        for (var i = 0; i < heights.Length; i++)
        {
            var strip = board.Strips[i];
            var from = left + plan.List.Shop.Saw.EndTrim * factor;
            foreach (var cut in strip.Cuts)
            {
                var box = new Box2(left + cut.From * factor, y - heights[i], left + cut.To * factor, y);
                // Strips may be drawn wider than they are; slants with them. A piece narrower than its strip lies along the upper edge.
                var shape = cut.Nested.IsEmpty ? Rectangle(box) : Path2.Polygon([.. cut.Nested.Select(p => new Point2(box.MinX + p.X * factor, y - p.Y / strip.Width * heights[i]))]);
                yield return new StrokeMark(shape, Pens.Visible, Layer.OutlineToCut, cut.Wood.Part);
                foreach (var mark in Label(cut.Nested.IsEmpty ? box : Middle(shape), Number.Print(number++, 0), cut)) yield return mark;
                if (forScreen) yield return new FillMark([shape], 0, Layer.Hit, cut.Wood.Part);
                from = Math.Max(from, box.MaxX);
            }
            foreach (var line in Spare(new(from, y - heights[i], outline.MaxX, y), outline.MaxX - from)) yield return line;
            y -= heights[i];
            if (i < heights.Length - 1 || rest > 0) yield return StrokeMark.Line(new(left, y), new(outline.MaxX, y), Pens.Visible, Layer.OutlineToCut);
        }
        foreach (var line in Spare(new(left, y - rest, outline.MaxX, y), rest)) yield return line;
        yield return new StrokeMark(Rectangle(outline), Pens.Outline, Layer.Visible);
    }

    /// <summary>The box that letters have in a slanted piece: at the height of its centre of gravity, as wide as it is all along them.</summary>
    private Box2 Middle(Path2 shape)
    {
        var corners = shape.Vertices.Select(v => v.At).ToList();
        var (area, moment) = (0.0, 0.0);
        for (int i = corners.Count - 1, j = 0; j < corners.Count; i = j++)
        {
            var cross = (corners[i] - corners[0]).Cross(corners[j] - corners[0]);
            (area, moment) = (area + cross, moment + cross * (corners[i].Y + corners[j].Y + corners[0].Y) / 3);
        }
        var (middle, half) = (moment / area, Math.Min(lettering, shape.Bounds.Height * 0.45) * 0.6);
        var (left, right) = (double.NegativeInfinity, double.PositiveInfinity);
        foreach (var y in (double[])[middle - half, middle + half])
        {
            var crossings = Enumerable.Range(0, shape.EdgeCount).Select(shape.Edge).Where(e => (e.From.Y - y) * (e.To.Y - y) <= 0 && e.From.Y != e.To.Y)
                .Select(e => e.From.X + (e.To.X - e.From.X) * (y - e.From.Y) / (e.To.Y - e.From.Y)).ToList();
            if (crossings.Count > 0) (left, right) = (Math.Max(left, crossings.Min()), Math.Min(right, crossings.Max()));
        }
        var high = 0.38 * shape.Bounds.Height; // a triangle is this high about its middle
        return right > left ? new(left, middle - high, right, middle + high) : new(shape.Bounds.Centre.X, middle - high, shape.Bounds.Centre.X, middle + high);
    }

    private static IEnumerable<Mark> Spare(Box2 box, double breadth) => breadth > 1.5 ? Hatch.Lines([Rectangle(box)], 2.5, Angle.FromDegrees(45), Layer.Waste) : [];

    private IEnumerable<Mark> Label(Box2 box, string number, PlannedCut cut)
    {
        var size = Math.Min(lettering, box.Height * 0.6);
        var length = $"{number}  {cut.Wood.Id}  {Units.Print(cut.Wood.SawnLength)}";
        var width = board.IsRipped || cut.Wood.SawnWidth > board.Width - 15 ? "" : $" × {Units.Print(cut.Wood.SawnWidth)}";
        foreach (var text in (string[])[length + width, length, $"{number}  {cut.Wood.Id}", cut.Wood.Id])
        {
            if (Lettering.Width(text, size) > box.Width - 1.2) continue;
            yield return new TextMark(box.Centre, text, size, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, of: cut.Wood.Part);
            yield break;
        }
        if (cut.Nested.IsEmpty || box.Width < 2) yield break;
        var (words, fitting) = TextFit.Within(cut.Wood.Id, box.Width - 0.6, size);
        yield return new TextMark(box.Centre, words, fitting, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, of: cut.Wood.Part);
    }

    private static Path2 Rectangle(Box2 b) => Path2.Rectangle(b.MinX, b.MinY, b.MaxX, b.MaxY);
}
