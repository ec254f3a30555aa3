using Rodwright.Cutting.Models;

namespace Rodwright.Cutting.Search;

/// <summary>A plan made board by board: always the board, filled as well as it can be, whose wood in use is cheapest. Something to begin with, never the last word.</summary>
internal static class Greedy
{
    /// <summary>The remainder planned to its end; null where strips are owed that no board is left for.</summary>
    public static Remainder? Finish(Remainder rest, Master master, Toil toil)
    {
        var model = rest.Model;
        var knapsacks = new Knapsack?[model.Widths.Length];
        while (!rest.IsDone)
        {
            var (best, rate) = ((List<(Column Column, int Count)>?)null, double.PositiveInfinity);
            foreach (var lane in model.Lanes.Where(l => l.IsWholeBoard && rest.Limits[l.Stock] != 0)) Offer([(lane, 1)], lane.Cost, null);
            // Those that could be cheapest, were they quite full, first: the others need not be filled at all.
            foreach (var (r, least) in Enumerable.Range(0, model.Rippings.Length).Select(r => (r, Least(model, model.Rippings[r]))).OrderBy(x => x.Item2))
            {
                var ripping = model.Rippings[r];
                if (least >= rate) break;
                if (rest.Limits[ripping.Stock] == 0) continue;
                Offer([.. ripping.Lanes.Select((l, i) => (model.Lanes[l], ripping.Counts[i]))], ripping.Cost, Column.Ripped(model, r));
            }
            if (best is null) return Short(rest);
            foreach (var (column, count) in best) if (rest.With(column, count) is { } with) rest = with; else return null;

            void Offer(List<(Lane Lane, int Count)> lanes, long cost, Column? board)
            {
                var (demand, columns, area) = ((int[])rest.Demand.Clone(), new List<(Column, int)>(), 0.0);
                if (board is not null) columns.Add((board, 1));
                foreach (var (lane, count) in lanes.OrderByDescending(l => l.Lane.Class))
                {
                    var knapsack = knapsacks[lane.Class] ??= new(model.Weight, model.Lanes.Where(l => l.Class == lane.Class).Max(l => l.Capacity));
                    for (var c = 0; c < count; c++)
                    {
                        var before = knapsack.Steps;
                        knapsack.Fill([.. demand.Select((d, i) => model.Class[i] <= lane.Class ? d : 0)], [.. model.Weight.Select((w, i) => Area(model, i))], _ => null);
                        var (pattern, worth) = knapsack.Best(lane.Capacity);
                        toil.Spend(knapsack.Steps - before);
                        if (pattern == 0) break;
                        var counts = knapsack.Counts(pattern);
                        for (var i = 0; i < counts.Length; i++) demand[i] -= counts[i];
                        area += worth;
                        var column = Column.Pattern(model, lane, counts);
                        master.Keep(column);
                        columns.Add((column, 1));
                    }
                }
                if (area <= 0 || (cost + 1e-9) / area is var own && own >= rate) return;
                (best, rate) = (columns, own);
            }
        }
        return rest;
    }

    private static double Least(Model model, Ripping ripping) =>
        (ripping.Cost + 1e-9) / ripping.Lanes.Select((l, i) => (double)ripping.Counts[i] * model.Lanes[l].Capacity * Math.Max(1, model.Widths[model.Lanes[l].Class])).Sum();

    private static long Area(Model model, int item) => model.Weight[item] * Math.Max(1, model.Widths[model.Class[item]]);

    private static Remainder? Short(Remainder rest)
    {
        for (var i = 0; i < rest.Demand.Length; i++)
        {
            if (rest.Demand[i] == 0) continue;
            if (rest.Model.Shortage[i] == 0) return null;
            rest = rest.With(Column.Uncut(rest.Model, i), rest.Demand[i])!;
        }
        return rest.IsDone ? rest : null;
    }
}
