using System.Collections.Immutable;
using Rodwright.Cutting.Models;

namespace Rodwright.Cutting.Search;

/// <summary>Turns counts of patterns into boards with the caller's own pieces on them.</summary>
internal sealed class Assembly
{
    private readonly CuttingProblem problem;
    private readonly Model model;
    private readonly Queue<CutPiece>[] waiting;

    private Assembly(CuttingProblem problem, Model model)
    {
        (this.problem, this.model) = (problem, model);
        waiting = [.. model.Pieces.Select(p => new Queue<CutPiece>(p.SelectMany(i => Single(problem.Pieces[i]))))];
    }

    public static (ImmutableArray<CutBoard> Boards, ImmutableArray<CutPiece> Uncut) Of(CuttingProblem problem, Model model, Remainder plan)
    {
        var assembly = new Assembly(problem, model);
        var boards = assembly.Boards(plan).OrderByDescending(b => b.Stock.Length).ThenByDescending(b => b.Stock.Width).ToList();
        var uncut = assembly.waiting.SelectMany(w => w).Concat(model.Hopeless.SelectMany(i => Single(problem.Pieces[i])));
        return ([.. Shortened(problem, boards)], [.. uncut]);
    }

    private static IEnumerable<CutPiece> Single(CutPiece piece) => Enumerable.Repeat(piece with { Quantity = 1 }, piece.Quantity);

    private IEnumerable<CutBoard> Boards(Remainder plan)
    {
        var strips = model.Lanes.Select(_ => new Queue<ImmutableArray<CutPiece>>()).ToArray();
        foreach (var (column, count) in plan.Taken.Where(t => t.Column.Lane is not null).OrderByDescending(t => t.Column.Counts.Sum()))
            for (var c = 0; c < count; c++) if (Take(column) is { IsEmpty: false } pieces) strips[column.Lane!.Index].Enqueue(pieces);
        foreach (var lane in model.Lanes.Where(l => l.IsWholeBoard))
        {
            var stock = problem.Stock[lane.Stock];
            while (strips[lane.Index].TryDequeue(out var pieces)) yield return new(stock, [Strip(stock, stock.Width, pieces)]);
        }
        foreach (var (column, count) in plan.Taken.Where(t => t.Column.Ripping >= 0).OrderByDescending(t => model.Rippings[t.Column.Ripping].Counts.Sum()))
        {
            var ripping = model.Rippings[column.Ripping];
            var stock = problem.Stock[ripping.Stock];
            for (var c = 0; c < count; c++)
            {
                var made = new List<CutStrip>();
                var isWhole = ripping.Counts.Sum() == 1;
                for (var k = ripping.Lanes.Length - 1; k >= 0; k--)
                    for (var n = 0; n < ripping.Counts[k]; n++)
                        made.Add(Strip(stock, isWhole ? stock.Width : model.Widths[model.Lanes[ripping.Lanes[k]].Class], strips[ripping.Lanes[k]].TryDequeue(out var pieces) ? pieces : []));
                if (made.Exists(s => s.Pieces.Length > 0)) yield return new(stock, [.. made]);
            }
        }
    }

    private ImmutableArray<CutPiece> Take(Column column)
    {
        var pieces = new List<CutPiece>();
        for (var i = 0; i < column.Counts.Length; i++)
            for (var c = 0; c < column.Counts[i] && waiting[i].TryDequeue(out var piece); c++) pieces.Add(piece);
        return [.. pieces.OrderByDescending(p => p.Length)];
    }

    private CutStrip Strip(StockBoard stock, long width, ImmutableArray<CutPiece> pieces) => new(width, pieces, Left(problem, stock, pieces));

    private static long Left(CuttingProblem problem, StockBoard stock, ImmutableArray<CutPiece> pieces) =>
        Math.Max(0, stock.Length - 2 * problem.Saw.EndTrim - pieces.Sum(p => p.Length + problem.Saw.Kerf));

    /// <summary>Where a shorter board of the same width that is left over, and no dearer, does as well, it is taken.</summary>
    private static IEnumerable<CutBoard> Shortened(CuttingProblem problem, List<CutBoard> boards)
    {
        var left = problem.Stock.Select(s => s.Quantity is { } q ? q - boards.Count(b => ReferenceEquals(b.Stock, s)) : int.MaxValue).ToArray();
        foreach (var board in boards)
        {
            var need = board.Strips.Max(s => s.Pieces.Sum(p => p.Length + problem.Saw.Kerf)) - problem.Saw.Kerf + 2 * problem.Saw.EndTrim;
            var better = Enumerable.Range(0, left.Length).Where(i => left[i] > 0 && problem.Stock[i] is var s && s.Width == board.Stock.Width && s.Length >= need
                && s.Cost <= board.Stock.Cost && (s.Cost, s.Length).CompareTo((board.Stock.Cost, board.Stock.Length)) < 0).OrderBy(i => (problem.Stock[i].Cost, problem.Stock[i].Length)).ToList();
            if (better.Count == 0)
            {
                yield return board;
                continue;
            }
            left[better[0]]--;
            left[problem.Stock.IndexOf(board.Stock)]++;
            var stock = problem.Stock[better[0]];
            yield return new(stock, [.. board.Strips.Select(s => s with { Width = s.Width == board.Stock.Width ? stock.Width : s.Width, Left = Left(problem, stock, s.Pieces) })]);
        }
    }
}
