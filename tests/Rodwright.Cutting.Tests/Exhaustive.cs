namespace Rodwright.Cutting.Tests;

/// <summary>The least cost of a small problem by trying everything: which pieces share a board, and a strip. Where stock does not suffice, the fewest pieces left uncut count first.</summary>
internal sealed class Exhaustive
{
    private readonly CuttingProblem problem;
    private readonly CutPiece[] pieces;
    private readonly Dictionary<(int, string), (int Uncut, long Cost)> known = [];
    private readonly Dictionary<(int, int), bool> fits = [];

    private Exhaustive(CuttingProblem problem)
    {
        this.problem = problem;
        pieces = [.. problem.Pieces.SelectMany(p => Enumerable.Repeat(p with { Quantity = 1 }, p.Quantity))];
    }

    public static (int Uncut, long Cost) Best(CuttingProblem problem)
    {
        var search = new Exhaustive(problem);
        return search.Best((1 << search.pieces.Length) - 1, [.. problem.Stock.Select(s => s.Quantity ?? 99)]);
    }

    private (int Uncut, long Cost) Best(int mask, int[] left)
    {
        if (mask == 0) return (0, 0);
        var key = (mask, string.Join(',', left));
        if (known.TryGetValue(key, out var best)) return best;
        var low = mask & -mask;
        var (uncut, cost) = Best(mask ^ low, left);
        best = (uncut + 1, cost);
        for (var rest = mask ^ low; ; rest = (rest - 1) & (mask ^ low))
        {
            for (var s = 0; s < left.Length; s++)
            {
                if (left[s] == 0 || !Fits(rest | low, s)) continue;
                left[s]--;
                var (u, c) = Best(mask ^ low ^ rest, left);
                left[s]++;
                if ((u, c + problem.Stock[s].Cost).CompareTo(best) < 0) best = (u, c + problem.Stock[s].Cost);
            }
            if (rest == 0) break;
        }
        return known[key] = best;
    }

    private bool Fits(int mask, int stock)
    {
        if (fits.TryGetValue((mask, stock), out var known)) return known;
        return fits[(mask, stock)] = Parts([.. pieces.Where((_, i) => (mask >> i & 1) == 1)], 0, [], problem.Stock[stock]);
    }

    /// <summary>Whether pieces part into strips that a board holds.</summary>
    private bool Parts(List<CutPiece> rest, int next, List<List<CutPiece>> strips, StockBoard board)
    {
        if (next == rest.Count)
        {
            var across = strips.Sum(s => s.Max(p => p.Width)) + (strips.Count - 1) * problem.Saw.Kerf + (strips.Count > 1 ? 2 * problem.Saw.EdgeTrim : 0);
            return across <= board.Width && strips.All(s => s.Sum(p => p.Length) + (s.Count - 1) * problem.Saw.Kerf + 2 * problem.Saw.EndTrim <= board.Length);
        }
        for (var i = 0; i <= strips.Count; i++)
        {
            if (i == strips.Count && (i > 0 && board.Width == 0)) break; // where only lengths count there is one strip
            if (i == strips.Count) strips.Add([]);
            strips[i].Add(rest[next]);
            var found = Parts(rest, next + 1, strips, board);
            strips[i].RemoveAt(strips[i].Count - 1);
            if (strips[i].Count == 0) strips.RemoveAt(i);
            if (found) return true;
        }
        return false;
    }
}
