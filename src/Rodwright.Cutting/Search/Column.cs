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
        var entries = counts.Select((c, i) => (Row: i, Value: (double)c)).Where(e => e.Value > 0).ToList();
        if (!lane.IsWholeBoard) entries.Add((lane.FedRow, -1));
        else if (model.LimitRow[lane.Stock] is >= 0 and var row) entries.Add((row, 1));
        return new(lane, -1, -1, counts, lane.Cost, [.. entries.Select(e => e.Row)], [.. entries.Select(e => e.Value)]);
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
