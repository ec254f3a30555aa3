namespace Rodwright.Cutting.Models;

/// <summary>Makes the model of a problem.</summary>
internal static class ModelMaker
{
    public static Model Of(CuttingProblem problem)
    {
        var saw = problem.Saw;
        var fits = problem.Pieces.Select(p => problem.Stock.Any(s => s.Quantity != 0 && s.Width >= p.Width && p.Length <= s.Length - 2 * saw.EndTrim)).ToArray();
        var kept = Enumerable.Range(0, problem.Pieces.Length).Where(i => fits[i]).ToArray();
        var widths = kept.Select(i => problem.Pieces[i].Width).Distinct().Order().ToArray();
        var items = kept.GroupBy(i => (problem.Pieces[i].Width, problem.Pieces[i].Length)).OrderBy(g => g.Key.Width).ThenByDescending(g => g.Key.Length).ToArray();
        var unit = items.Select(g => g.Key.Length + saw.Kerf).DefaultIfEmpty(1).Aggregate(Common);
        var classes = items.Select(g => Array.IndexOf(widths, g.Key.Width)).ToArray();
        var demand = items.Select(g => g.Sum(i => problem.Pieces[i].Quantity)).ToArray();

        var (lanes, rippings) = (new List<Lane>(), new List<Ripping>());
        var limits = problem.Stock.Select(s => s.Quantity is { } q && q < demand.Sum() ? q : (int?)null).ToArray();
        var row = items.Length;
        var limitRow = limits.Select(l => l is null ? -1 : row++).ToArray();
        var ways = Ways(problem, widths, limits, out var whole);
        // Strips of one length and class are alike, whatever board they were ripped from.
        var isRipped = ways.Exists(w => w.Layout.Length > 1);
        var fed = new SortedDictionary<(long Length, int Class), Lane>();
        foreach (var (s, layout) in ways)
        {
            var board = problem.Stock[s];
            var capacity = (int)((board.Length - 2 * saw.EndTrim + saw.Kerf) / unit);
            if (!isRipped)
            {
                lanes.Add(new(lanes.Count, s, layout[0], capacity, board.Cost, -1));
                continue;
            }
            foreach (var k in layout.Distinct().Order())
                if (!fed.ContainsKey((board.Length, k))) lanes.Add(fed[(board.Length, k)] = new(lanes.Count, -1, k, capacity, 0, row++));
            var groups = layout.GroupBy(k => k).Select(g => (Lane: fed[(board.Length, g.Key)].Index, Count: g.Count())).OrderBy(g => g.Lane).ToArray();
            rippings.Add(new(s, board.Cost, [.. groups.Select(x => x.Lane)], [.. groups.Select(x => x.Count)]));
        }
        var used = ways.Select(w => w.Stock).Distinct().ToList();
        var costs = used.Select(s => problem.Stock[s].Cost).Where(c => c > 0);
        var step = costs.DefaultIfEmpty(1).Aggregate(Common);
        var weights = items.Select(g => (int)((g.Key.Length + saw.Kerf) / unit)).ToArray();
        return new()
        {
            Weight = weights,
            Demand = demand,
            Class = classes,
            Widths = widths,
            Pieces = [.. items.Select(g => g.ToArray())],
            Lanes = [.. lanes],
            Rippings = [.. rippings],
            Sets = Sets(problem, used),
            Limits = limits,
            LimitRow = limitRow,
            Rows = row,
            Shortage = Shortages(problem, limits, ways, items.Select(g => g.Key).ToList(), widths, step),
            Step = step,
            Hopeless = [.. Enumerable.Range(0, problem.Pieces.Length).Where(i => !fits[i])],
            IsWhole = whole,
        };
    }

    /// <summary>Every way of using a board that no other board without limit makes needless: as long, no dearer, and strip by strip as wide.</summary>
    private static List<(int Stock, int[] Layout)> Ways(CuttingProblem problem, long[] widths, int?[] limits, out bool isWhole)
    {
        var ways = new List<(int Stock, int[] Layout)>();
        isWhole = true;
        for (var s = 0; s < problem.Stock.Length; s++)
        {
            if (limits[s] == 0 || problem.Stock[s].Length <= 2 * problem.Saw.EndTrim || widths.Length == 0) continue;
            ways.AddRange(Layouts.Of(widths, problem.Stock[s].Width, problem.Saw, out var all).Select(l => (s, l)));
            isWhole &= all;
        }
        return [.. ways.Where((w, i) => !ways.Where((o, j) => j != i && limits[o.Stock] is null && Betters(o, w) && (!Betters(w, o) || limits[w.Stock] is not null || j < i)).Any())];

        bool Betters((int Stock, int[] Layout) a, (int Stock, int[] Layout) b) =>
            problem.Stock[a.Stock].Length >= problem.Stock[b.Stock].Length && problem.Stock[a.Stock].Cost <= problem.Stock[b.Stock].Cost && Layouts.Covers(a.Layout, b.Layout);
    }

    private static bool[][] Sets(CuttingProblem problem, List<int> used)
    {
        List<List<int>> sets = [used, .. used.GroupBy(s => problem.Stock[s].Width).Select(g => g.ToList()), .. used.GroupBy(s => problem.Stock[s].Length).Select(g => g.ToList()), .. used.Select(s => new List<int> { s })];
        return [.. sets.Select(set => Enumerable.Range(0, problem.Stock.Length).Select(set.Contains).ToArray()).DistinctBy(set => string.Join(',', set))];
    }

    /// <summary>Only an item that no unlimited board takes can be left uncut; leaving one costs more than all the limited boards together and a board for every piece.</summary>
    private static long[] Shortages(CuttingProblem problem, int?[] limits, List<(int Stock, int[] Layout)> ways, List<(long Width, long Length)> items, long[] widths, long step)
    {
        var unlimited = ways.Where(w => limits[w.Stock] is null).ToList();
        var total = step;
        foreach (var s in ways.Select(w => w.Stock).Distinct()) total += problem.Stock[s].Cost * (limits[s] ?? 1);
        total += unlimited.Select(w => problem.Stock[w.Stock].Cost).DefaultIfEmpty(0).Max() * problem.Pieces.Sum(p => p.Quantity);
        return [.. items.Select(i => unlimited.Exists(w => widths[w.Layout[0]] >= i.Width && problem.Stock[w.Stock].Length - 2 * problem.Saw.EndTrim >= i.Length) ? 0 : total)];
    }

    private static long Common(long a, long b) => b == 0 ? a : Common(b, a % b);
}
