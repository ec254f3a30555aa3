using Rodwright.Cutting.Models;

namespace Rodwright.Cutting.Search;

/// <summary>Something a plan can have any number of: a pattern of pieces on a strip, a board ripped in a certain way, or a piece left uncut.</summary>
internal sealed class Column
{
    private Column(Lane? lane, int ripping, int shortage, int[] counts, long cost, int[] rows, double[] values) =>
        (Lane, Ripping, Shortage, Counts, Cost, Rows, Values) = (lane, ripping, shortage, counts, cost, rows, values);

    /// <summary>The strip of a pattern; null for the others.</summary>
    public Lane? Lane { get; }

    /// <summary>Which ripping; -1 for the others.</summary>
    public int Ripping { get; }

    /// <summary>Which item is left uncut; -1 for the others.</summary>
    public int Shortage { get; }

    /// <summary>Pieces of each item it gives.</summary>
    public int[] Counts { get; }

    public long Cost { get; }

    /// <summary>Rows of the model it stands in.</summary>
    public int[] Rows { get; }

    public double[] Values { get; }

    /// <summary>Whether a relaxation has ever made use of it: programs to come begin with those.</summary>
    public bool HasServed { get; set; }

    /// <summary>The board it uses up whole; -1 for a strip of a ripped board and a piece left uncut.</summary>
    public int Stock(Model model) => Lane is { IsWholeBoard: true } lane ? lane.Stock : Ripping >= 0 ? model.Rippings[Ripping].Stock : -1;

    public static Column Pattern(Model model, Lane lane, int[] counts)
    {
        var last = lane.IsWholeBoard ? model.LimitRow[lane.Stock] : lane.FedRow;
        var n = last >= 0 ? 1 : 0;
        foreach (var count in counts) if (count > 0) n++;
        var (rows, values) = (new int[n], new double[n]);
        n = 0;
        for (var i = 0; i < counts.Length; i++) if (counts[i] > 0) (rows[n], values[n++]) = (i, counts[i]);
        if (last >= 0) (rows[n], values[n]) = (last, lane.IsWholeBoard ? 1 : -1);
        return new(lane, -1, -1, counts, lane.Cost, rows, values);
    }

    public static Column Ripped(Model model, int which)
    {
        var ripping = model.Rippings[which];
        var entries = ripping.Lanes.Select((l, i) => (Row: model.Lanes[l].FedRow, Value: (double)ripping.Counts[i])).ToList();
        if (model.LimitRow[ripping.Stock] is >= 0 and var row) entries.Add((row, 1));
        return new(null, which, -1, new int[model.Items], ripping.Cost, [.. entries.Select(e => e.Row)], [.. entries.Select(e => e.Value)]);
    }

    public static Column Uncut(Model model, int item)
    {
        var counts = new int[model.Items];
        counts[item] = 1;
        return new(null, -1, item, counts, model.Shortage[item], [item], [1]);
    }

    /// <summary>Whether a piece of an item begins at a place of the strip.</summary>
    public bool BeginsAt(Model model, int item, int at)
    {
        if (Counts[item] == 0) return false;
        for (var i = 0; i < item && at >= 0; i++) at -= Counts[i] * model.Weight[i];
        return at >= 0 && at % model.Weight[item] == 0 && at / model.Weight[item] < Counts[item];
    }

    /// <summary>Patterns are the same that have the same pieces on the same kind of strip.</summary>
    public sealed class SamePattern : IEqualityComparer<Column>
    {
        public bool Equals(Column? x, Column? y) => x?.Lane?.Index == y?.Lane?.Index && x is not null && y is not null && x.Counts.AsSpan().SequenceEqual(y.Counts);

        public int GetHashCode(Column column)
        {
            var hash = column.Lane!.Index;
            foreach (var count in column.Counts) hash = unchecked(hash * 31 + count);
            return hash;
        }
    }

    /// <summary>Where each piece begins along the strip, items in the model's order: one path for one pattern.</summary>
    public IEnumerable<(int At, int Item)> Path(Model model)
    {
        if (Lane is null) yield break;
        var at = 0;
        for (var i = 0; i < Counts.Length; i++)
        {
            for (var c = 0; c < Counts[i]; c++)
            {
                yield return (at, i);
                at += model.Weight[i];
            }
        }
    }
}
