using System.Collections.Immutable;
using Rodwright.Cutting;
using Rodwright.Geometry;
using Rodwright.Stairs.Shops;

namespace Rodwright.Joinery.Timber;

/// <summary>The boards of one material and thickness as a cutting problem: tenths of a millimetre and hundredths of the currency; pieces rounded up, boards down.</summary>
internal sealed class SectionProblem(Shop shop, double mark, string material, double thickness, bool isSheet, ImmutableArray<Wood> woods)
{
    private const double Tenth = 10;
    private const double Hundredth = 100;

    // By how much the widths of two that lie head to tail may differ, mm: not at all; by a setting of the saw, or by two, in mm and in inches; by more.
    private static readonly double[] Differences = [Tolerance.Joint, 13, 26, 60];

    /// <summary>
    /// The cheapest of several plans: slanted pieces head to tail in pairs of like widths, in pairs of less and less alike, and every piece cut off square. Where two cost the same it is the earlier
    /// one, but the square one, which is less to saw, where it buys no more. Proven best of all kinds where no kind can have anything cheaper: after the first, each is asked for only as far as it
    /// could be taken, and its search ends once its bound, which is a true one, says that it has nothing of the sort.
    /// </summary>
    public SectionPlan Solve(ICuttingSolver solver, CuttingEffort effort, CancellationToken stop)
    {
        var kinds = (isSheet ? [] : Differences).Select(d => NestedPair.Of(woods, shop.Saw.Kerf, mark, d)).Where(p => !p.IsEmpty).DistinctBy(p => string.Join(' ', p.Select(x => x.Id))).Append([]);
        (SectionPlan Section, CuttingPlan Plan)? best = null;
        var (bound, lengthBound, isProven) = (double.PositiveInfinity, double.PositiveInfinity, true);
        foreach (var pairs in kinds)
        {
            // Where pieces are left uncut, cost is not all: then the next is looked for to its end.
            var found = Solve(pairs, solver, best is { Section.Uncut.IsEmpty: true } least ? effort with { Below = least.Plan.Cost + (pairs.IsEmpty ? 1 : 0) } : effort, stop);
            isProven &= found.Plan.IsProven || found.Plan.IsRuledOut;
            if (found.Plan.IsRuledOut) continue;
            (bound, lengthBound) = (Math.Min(bound, found.Section.Bound), Math.Min(lengthBound, found.Section.LengthBound));
            if (best is not { } before || IsBetter(found, before, pairs.IsEmpty)) best = found;
        }
        var section = best!.Value.Section;
        return section with { Bound = bound, LengthBound = lengthBound, IsProven = isProven, Gap = isProven ? 0 : bound > 0 ? Math.Max(0, section.Cost / bound - 1) : section.Gap };
    }

    private static bool IsBetter((SectionPlan Section, CuttingPlan Plan) one, (SectionPlan Section, CuttingPlan Plan) other, bool isSquare)
    {
        if (one.Section.Uncut.Length != other.Section.Uncut.Length) return one.Section.Uncut.Length < other.Section.Uncut.Length;
        return one.Plan.Cost < other.Plan.Cost || isSquare && one.Plan.Cost == other.Plan.Cost && one.Section.BoughtLength <= other.Section.BoughtLength + Tolerance.Joint;
    }

    private (SectionPlan Section, CuttingPlan Plan) Solve(ImmutableArray<NestedPair> pairs, ICuttingSolver solver, CuttingEffort effort, CancellationToken stop)
    {
        var stock = Stock().ToList();
        // Where nothing has a price, the least length is bought.
        var isPriced = stock.Exists(s => s.Price > 0);
        ImmutableArray<StockBoard> boards = [.. stock.Select((s, i) => new StockBoard(Number.Print(i, 0), Down(s.Length), Down(s.Width), Cost(s, isPriced), s.Quantity))];
        var paired = pairs.SelectMany(p => new[] { p.First, p.Second }).ToHashSet<Wood>(ReferenceEqualityComparer.Instance);
        List<Item> items = [.. woods.Where(w => !paired.Contains(w)).Select(w => new Item(w.Id, w.SawnLength, w.SawnWidth, w, null)), .. pairs.Select(p => new Item(p.Id, p.Length, p.Width, null, p))];
        ImmutableArray<CutPiece> pieces = [.. items.Select(i => new CutPiece(i.Id, Up(i.Length), Up(i.Width), 1))];
        var saw = new Saw(Up(shop.Saw.Kerf), Up(shop.Saw.EndTrim), Up(shop.Saw.EdgeTrim));
        var plan = solver.Solve(new(pieces, boards, saw), effort, null, stop);
        var waiting = items.GroupBy(i => (i.Id, Up(i.Length), Up(i.Width))).ToDictionary(g => g.Key, g => new Queue<Item>(g));
        ImmutableArray<PlannedBoard> made = [.. plan.Boards.Select((b, i) => Board(b, stock[boards.IndexOf(b.Stock)], i + 1, waiting))];
        ImmutableArray<Wood> uncut = [.. plan.Uncut.SelectMany(p => Take(waiting, p).Woods)];
        var section = new SectionPlan(material, thickness, isSheet, made, uncut, made.Sum(b => b.Price), isPriced ? plan.Bound / Hundredth : 0, plan.IsProven, plan.Gap)
        {
            LengthBound = isPriced ? plan.Bound / Hundredth / stock.Max(s => s.Price / s.Length) : plan.Bound / Tenth,
        };
        return (section, plan);
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

    private PlannedBoard Board(CutBoard board, Source source, int number, Dictionary<(string, long, long), Queue<Item>> waiting)
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
                var item = Take(waiting, piece);
                cuts.AddRange(item.At(at));
                at += item.Length + shop.Saw.Kerf;
            }
            var width = board.Strips.Length > 1 ? strip.Width / Tenth : source.Width;
            strips.Add(new(edge, width, cuts.ToImmutable(), Math.Max(0, source.Length - shop.Saw.EndTrim - at)));
            edge += width + shop.Saw.Kerf;
        }
        return new(number, material, source.Length, source.Width, thickness, source.Offcut, source.Price, strips.ToImmutable());
    }

    private static Item Take(Dictionary<(string, long, long), Queue<Item>> waiting, CutPiece piece) => waiting[(piece.Id, piece.Length, piece.Width)].Dequeue();

    private static long Cost(Source source, bool isPriced) => source.Offcut.Length > 0 ? 0 : isPriced ? (long)Math.Round(source.Price * Hundredth) : Down(source.Length);

    private static long Up(double length) => (long)Math.Ceiling(length * Tenth - 1e-6);

    private static long Down(double length) => (long)Math.Floor(length * Tenth + 1e-6);

    /// <summary>What takes one length of a strip: a piece, or two head to tail.</summary>
    private sealed record Item(string Id, double Length, double Width, Wood? Wood, NestedPair? Pair)
    {
        public IEnumerable<Wood> Woods => Pair is { } pair ? [pair.First, pair.Second] : [Wood!];

        public IEnumerable<PlannedCut> At(double at) => Pair is { } pair
            ?
            [
                new(pair.First, at, at + pair.FirstShape.Length) { Nested = pair.FirstShape.Ring },
                new(pair.Second, at + pair.Behind, at + pair.Behind + pair.SecondShape.Length) { Nested = pair.SecondShape.Ring },
            ]
            : [new(Wood!, at, at + Length)];
    }

    private sealed record Source(double Length, double Width, double Price, int? Quantity, string Offcut);
}
