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

        var (lanes, rippings, whole) = (new List<Lane>(), new List<Ripping>(), true);
        var limits = problem.Stock.Select(s => s.Quantity is { } q && q < demand.Sum() ? q : (int?)null).ToArray();
        var row = items.Length;
        var limitRow = limits.Select(l => l is null ? -1 : row++).ToArray();
        for (var s = 0; s < problem.Stock.Length; s++)
        {
            var board = problem.Stock[s];
            var room = board.Length - 2 * saw.EndTrim + saw.Kerf;
            if (limits[s] == 0 || room <= saw.Kerf) continue;
            var layouts = Layouts.Of(widths, board.Width, saw, out var all);
            whole &= all;
            var capacity = (int)(room / unit);
            if (layouts is [[var only]])
            {
                lanes.Add(new(lanes.Count, s, only, capacity, board.Cost, -1));
                continue;
            }
            var fed = new Dictionary<int, Lane>();
            foreach (var k in layouts.SelectMany(l => l).Distinct().Order()) lanes.Add(fed[k] = new(lanes.Count, s, k, capacity, 0, row++));
            rippings.AddRange(layouts.Select(l => l.GroupBy(k => k).Select(g => (Lane: fed[g.Key].Index, Count: g.Count())).ToArray())
                .Select(l => new Ripping(s, board.Cost, [.. l.Select(x => x.Lane)], [.. l.Select(x => x.Count)])));
        }
        var costs = Enumerable.Range(0, problem.Stock.Length).Where(s => lanes.Exists(l => l.Stock == s)).Select(s => problem.Stock[s].Cost).Where(c => c > 0);
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
            Limits = limits,
            LimitRow = limitRow,
            Rows = row,
            Shortage = Shortages(problem, limits, lanes, weights, classes, step),
            Step = step,
            Hopeless = [.. Enumerable.Range(0, problem.Pieces.Length).Where(i => !fits[i])],
            IsWhole = whole,
        };
    }

    /// <summary>Only an item that no unlimited board takes can be left uncut; leaving one costs more than all the limited boards together and a board for every piece.</summary>
    private static long[] Shortages(CuttingProblem problem, int?[] limits, List<Lane> lanes, int[] weights, int[] classes, long step)
    {
        var unlimited = lanes.Where(l => limits[l.Stock] is null).ToList();
        var total = step;
        for (var s = 0; s < limits.Length; s++) if (lanes.Exists(l => l.Stock == s)) total += problem.Stock[s].Cost * (limits[s] ?? 1);
        total += unlimited.Select(l => problem.Stock[l.Stock].Cost).DefaultIfEmpty(0).Max() * problem.Pieces.Sum(p => p.Quantity);
        return [.. weights.Select((w, i) => unlimited.Exists(l => l.Class >= classes[i] && l.Capacity >= w) ? 0 : total)];
    }

    private static long Common(long a, long b) => b == 0 ? a : Common(b, a % b);
}
