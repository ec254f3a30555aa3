using System.Runtime.CompilerServices;
using Rodwright.Cutting.Models;

namespace Rodwright.Cutting.Search;

/// <summary>Puts prices to the knapsack: patterns that pay, and a bound that holds whatever the prices are.</summary>
internal sealed class Pricing
{
    private readonly Model model;
    private readonly Remainder rest;
    private readonly IReadOnlyList<Branch> branches;
    private readonly Knapsack[] knapsacks;
    private readonly long scale;
    private readonly long wanted;
    private readonly long highest;
    private long steps;

    public Pricing(Model model, Remainder rest, IReadOnlyList<Branch> branches, Knapsack[] knapsacks, long dearest)
    {
        (this.model, this.rest, this.branches, this.knapsacks) = (model, rest, branches, knapsacks);
        scale = Math.Max(1, (1L << 40) / dearest);
        wanted = rest.Demand.Sum(d => (long)d);
        highest = (1L << 60) / (2 + Math.Min(wanted, model.Lanes.Select(l => l.Capacity / model.Weight.DefaultIfEmpty(1).Min()).DefaultIfEmpty(1).Max()) + model.Rippings.Select(r => r.Counts.Sum()).DefaultIfEmpty(0).Max());
    }

    /// <summary>Bound of the last prices, raised to the next total that costs can add up to; never below 0.</summary>
    public long Bound { get; private set; }

    /// <summary>Steps since they were last taken.</summary>
    public long TakeSteps()
    {
        var taken = steps;
        steps = 0;
        return taken;
    }

    /// <summary>The patterns that would make the program cheaper, at most one for each strip.</summary>
    public List<Column> Price(double[] duals)
    {
        var price = new long[duals.Length];
        for (var i = 0; i < model.Items; i++) price[i] = Math.Max(0, Whole(duals[i]));
        for (var s = 0; s < model.LimitRow.Length; s++) if (model.LimitRow[s] is >= 0 and var row) price[row] = Math.Min(0, Whole(duals[row]));
        foreach (var lane in model.Lanes.Where(l => !l.IsWholeBoard)) price[lane.FedRow] = Math.Max(0, Whole(duals[lane.FedRow]));
        for (var b = 0; b < branches.Count; b++)
        {
            var dual = Whole(duals[model.Rows + b]);
            price[model.Rows + b] = branches[b].IsLeast ? Math.Max(0, dual) : Math.Min(0, dual);
        }

        Int128 bound = 0;
        for (var i = 0; i < model.Items; i++) bound += (Int128)price[i] * rest.Demand[i];
        for (var s = 0; s < model.LimitRow.Length; s++) if (model.LimitRow[s] is >= 0 and var row) bound += (Int128)price[row] * rest.Limits[s]!.Value;
        foreach (var lane in model.Lanes.Where(l => !l.IsWholeBoard)) bound += (Int128)price[lane.FedRow] * rest.Owed[lane.Index];
        for (var b = 0; b < branches.Count; b++) bound += (Int128)price[model.Rows + b] * branches[b].Limit;

        var (stocks, ways) = (new long[model.Limits.Length], new long[model.Rippings.Length]);
        for (var s = 0; s < stocks.Length; s++) stocks[s] = HeldStock(s, price);
        for (var b = 0; b < branches.Count; b++) if (branches[b].What == Counted.Ripping) ways[branches[b].Index] += price[model.Rows + b];
        for (var r = 0; r < model.Rippings.Length; r++) bound += Math.Min(0, OfRipping(r, price) - ways[r] - stocks[model.Rippings[r].Stock]) * (Int128)(rest.Limits[model.Rippings[r].Stock] ?? wanted);
        for (var i = 0; i < model.Items; i++) if (model.Shortage[i] > 0) bound += Math.Min(0, model.Shortage[i] * scale - price[i] - Held(Counted.Shortage, i, price)) * (Int128)rest.Demand[i];

        var better = new List<Column>();
        bound += OfLanes(price, better);
        Bound = Up(bound);
        return better;
    }

    // Any price gives a true bound; held within what whole numbers can be added up in.
    private long Whole(double dual) => (long)Math.Floor(Math.Clamp(dual * scale, -highest, highest));

    /// <summary>Goes through the strips of all classes. A class takes what the one below takes and its own items, so that one table does for all that have no branch at a place.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Int128 OfLanes(long[] price, List<Column> better)
    {
        if (knapsacks.Length == 0) return 0;
        var (common, next) = (knapsacks[^1], 0);
        var before = common.Steps;
        common.Begin();
        Int128 under = 0;
        for (var k = 0; k < model.Widths.Length; k++)
        {
            var end = Array.FindLastIndex(model.Class, c => c == k) + 1;
            common.Add(next, end, rest.Demand, price, _ => null);
            next = end;
            var places = Places(k, price);
            if (places is null)
            {
                under += OfClass(k, common, price, better);
                continue;
            }
            var own = knapsacks[k];
            var start = own.Steps;
            own.Begin();
            own.Add(0, end, rest.Demand, price, i => places.GetValueOrDefault(i));
            under += OfClass(k, own, price, better);
            steps += own.Steps - start;
        }
        steps += common.Steps - before;
        return under;
    }

    /// <summary>What branches add to the worth of an item where it begins, in a class; null for none.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Dictionary<int, Dictionary<int, long>>? Places(int k, long[] price)
    {
        Dictionary<int, Dictionary<int, long>>? places = null;
        for (var b = 0; b < branches.Count; b++)
        {
            if (branches[b] is not { What: Counted.Place } branch || branch.Class != k || price[model.Rows + b] == 0) continue;
            places ??= [];
            if (!places.TryGetValue(branch.Index, out var of)) places[branch.Index] = of = [];
            of[branch.At] = of.GetValueOrDefault(branch.At) + price[model.Rows + b];
        }
        return places;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Int128 OfClass(int k, Knapsack knapsack, long[] price, List<Column> better)
    {
        Int128 under = 0;
        foreach (var lane in model.Lanes)
        {
            if (lane.Class != k) continue;
            var there = lane.IsWholeBoard && rest.Limits[lane.Stock] is { } limit ? Math.Min(limit, wanted) : wanted;
            if (there == 0) continue;
            var (pattern, worth) = knapsack.Best(lane.Capacity);
            var own = lane.IsWholeBoard
                ? lane.Cost * scale - (model.LimitRow[lane.Stock] is >= 0 and var row ? price[row] : 0) - HeldStock(lane.Stock, price)
                : price[lane.FedRow];
            var reduced = own - worth;
            if (reduced >= 0) continue;
            under += (Int128)reduced * there;
            // Where a branch asks for more boards than are needed, one that nothing is cut from may be the cheapest.
            if (reduced < -Least) better.Add(Column.Pattern(model, lane, knapsack.Counts(pattern)));
        }
        return under;
    }

    /// <summary>What a pattern must save to be worth adding: well above what rounding prices can feign.</summary>
    private long Least => Math.Max(8, scale / (1 << 24)) + 4096;

    private long OfRipping(int r, long[] price)
    {
        var ripping = model.Rippings[r];
        var own = ripping.Cost * scale;
        if (model.LimitRow[ripping.Stock] is >= 0 and var row) own -= price[row];
        for (var k = 0; k < ripping.Lanes.Length; k++) own -= ripping.Counts[k] * price[model.Lanes[ripping.Lanes[k]].FedRow];
        return own;
    }

    private long HeldStock(int stock, long[] price)
    {
        var sum = 0L;
        for (var b = 0; b < branches.Count; b++) if (branches[b].What == Counted.Stock && model.Sets[branches[b].Index][stock]) sum += price[model.Rows + b];
        return sum;
    }

    private long Held(Counted what, int index, long[] price)
    {
        var sum = 0L;
        for (var b = 0; b < branches.Count; b++) if (branches[b].What == what && branches[b].Index == index) sum += price[model.Rows + b];
        return sum;
    }

    private long Up(Int128 scaled)
    {
        if (scaled <= 0) return 0;
        var unit = (Int128)scale * model.Step;
        return (long)((scaled + unit - 1) / unit) * model.Step;
    }
}
