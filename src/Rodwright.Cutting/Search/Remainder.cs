using Rodwright.Cutting.Models;

namespace Rodwright.Cutting.Search;

/// <summary>What is still to be planned after some columns have been taken.</summary>
internal sealed class Remainder
{
    private Remainder(Model model, int[] demand, int?[] limits, int[] owed, long cost, List<(Column, int)> taken) =>
        (Model, Demand, Limits, Owed, Cost, Taken) = (model, demand, limits, owed, cost, taken);

    public Model Model { get; }

    /// <summary>Pieces of each item still wanted.</summary>
    public int[] Demand { get; }

    /// <summary>Boards of each stock still there.</summary>
    public int?[] Limits { get; }

    /// <summary>For each lane, strips already cut for which no board has been ripped yet; below 0 where strips lie ready.</summary>
    public int[] Owed { get; }

    /// <summary>Cost of what was taken.</summary>
    public long Cost { get; }

    public List<(Column Column, int Count)> Taken { get; }

    public bool IsDone => Array.TrueForAll(Demand, d => d == 0) && Array.TrueForAll(Owed, o => o <= 0);

    public static Remainder Whole(Model model) => new(model, model.Demand, model.Limits, new int[model.Lanes.Length], 0, []);

    /// <summary>The remainder after a column has been taken so often; null where there are not boards enough.</summary>
    public Remainder? With(Column column, int count)
    {
        var (demand, limits, owed) = ((int[])Demand.Clone(), (int?[])Limits.Clone(), (int[])Owed.Clone());
        for (var i = 0; i < demand.Length; i++) demand[i] = Math.Max(0, demand[i] - count * column.Counts[i]);
        if (column.Stock(Model) is >= 0 and var stock && limits[stock] is { } limit)
        {
            if (limit < count) return null;
            limits[stock] = limit - count;
        }
        if (column.Lane is { IsWholeBoard: false } lane) owed[lane.Index] += count;
        if (column.Ripping >= 0)
        {
            var ripping = Model.Rippings[column.Ripping];
            for (var k = 0; k < ripping.Lanes.Length; k++) owed[ripping.Lanes[k]] -= count * ripping.Counts[k];
        }
        return new(Model, demand, limits, owed, Cost + count * column.Cost, [.. Taken, (column, count)]);
    }

    /// <summary>Whether a pattern gives nothing that is not wanted, and something that is.</summary>
    public bool Wants(Column column)
    {
        var some = column.Ripping >= 0;
        for (var i = 0; i < Demand.Length; i++)
        {
            if (column.Counts[i] > Demand[i]) return false;
            some |= column.Counts[i] > 0;
        }
        return some;
    }
}
