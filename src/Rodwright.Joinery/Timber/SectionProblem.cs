using System.Collections.Immutable;
using Rodwright.Cutting;
using Rodwright.Geometry;
using Rodwright.Stairs.Shops;

namespace Rodwright.Joinery.Timber;

/// <summary>The boards of one material and thickness as a cutting problem: tenths of a millimetre and hundredths of the currency; pieces rounded up, boards down.</summary>
internal sealed class SectionProblem(Shop shop, string material, double thickness, bool isSheet, ImmutableArray<Wood> woods)
{
    private const double Tenth = 10;
    private const double Hundredth = 100;

    public SectionPlan Solve(ICuttingSolver solver, CuttingEffort effort, CancellationToken stop)
    {
        var stock = Stock().ToList();
        // Where nothing has a price, the least length is bought.
        var isPriced = stock.Exists(s => s.Price > 0);
        ImmutableArray<StockBoard> boards = [.. stock.Select((s, i) => new StockBoard(Number.Print(i, 0), Down(s.Length), Down(s.Width), Cost(s, isPriced), s.Quantity))];
        ImmutableArray<CutPiece> pieces = [.. woods.Select(w => new CutPiece(w.Id, Up(w.SawnLength), Up(w.SawnWidth), 1))];
        var saw = new Saw(Up(shop.Saw.Kerf), Up(shop.Saw.EndTrim), Up(shop.Saw.EdgeTrim));
        var plan = solver.Solve(new(pieces, boards, saw), effort, null, stop);
        var waiting = woods.GroupBy(w => (w.Id, Up(w.SawnLength), Up(w.SawnWidth))).ToDictionary(g => g.Key, g => new Queue<Wood>(g));
        ImmutableArray<PlannedBoard> made = [.. plan.Boards.Select((b, i) => Board(b, stock[boards.IndexOf(b.Stock)], i + 1, waiting))];
        ImmutableArray<Wood> uncut = [.. plan.Uncut.Select(p => Take(waiting, p))];
        return new(material, thickness, isSheet, made, uncut, made.Sum(b => b.Price), isPriced ? plan.Bound / Hundredth : 0, plan.IsProven, plan.Gap);
    }

    private IEnumerable<Source> Stock()
    {
        foreach (var offcut in shop.Offcuts.Where(o => o.Material == material && Same(o.Thickness)))
            yield return new(offcut.Length, offcut.Width, 0, 1, offcut.Id);
        if (isSheet)
            foreach (var sheet in shop.Sheets.Where(s => s.Material == material && Same(s.Thickness))) yield return new(sheet.Length, sheet.Width, sheet.Price, null, "");
        else
            foreach (var board in shop.Boards.Where(b => b.Material == material && Same(b.Thickness)))
                foreach (var length in board.Lengths) yield return new(length, board.Width, board.PriceOf(length), (int?)board.Quantity, "");
    }

    private bool Same(double t) => Math.Abs(t - thickness) < 1e-6;

    private PlannedBoard Board(CutBoard board, Source source, int number, Dictionary<(string, long, long), Queue<Wood>> waiting)
    {
        var strips = ImmutableArray.CreateBuilder<PlannedStrip>();
        var edge = board.Strips.Length > 1 ? shop.Saw.EdgeTrim : 0;
        // What nothing is cut from is not ripped off: it stays together as what is left of the board.
        foreach (var strip in board.Strips.Where(s => !s.Pieces.IsEmpty))
        {
            var cuts = ImmutableArray.CreateBuilder<PlannedCut>();
            var at = shop.Saw.EndTrim;
            foreach (var piece in strip.Pieces)
            {
                var wood = Take(waiting, piece);
                cuts.Add(new(wood, at, at + wood.SawnLength));
                at += wood.SawnLength + shop.Saw.Kerf;
            }
            var width = board.Strips.Length > 1 ? strip.Width / Tenth : source.Width;
            strips.Add(new(edge, width, cuts.ToImmutable(), Math.Max(0, source.Length - shop.Saw.EndTrim - at)));
            edge += width + shop.Saw.Kerf;
        }
        return new(number, material, source.Length, source.Width, thickness, source.Offcut, source.Price, strips.ToImmutable());
    }

    private static Wood Take(Dictionary<(string, long, long), Queue<Wood>> waiting, CutPiece piece) => waiting[(piece.Id, piece.Length, piece.Width)].Dequeue();

    private static long Cost(Source source, bool isPriced) => source.Offcut.Length > 0 ? 0 : isPriced ? (long)Math.Round(source.Price * Hundredth) : Down(source.Length);

    private static long Up(double length) => (long)Math.Ceiling(length * Tenth - 1e-6);

    private static long Down(double length) => (long)Math.Floor(length * Tenth + 1e-6);

    private sealed record Source(double Length, double Width, double Price, int? Quantity, string Offcut);
}
