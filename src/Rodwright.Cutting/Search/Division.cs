using Rodwright.Cutting.Models;

namespace Rodwright.Cutting.Search;

/// <summary>Finds a count that a relaxation leaves broken, to divide the search by it.</summary>
internal static class Division
{
    private const double Broken = 1e-5;

    /// <summary>The count to divide by, held at its whole number and as its broken one; null when none is broken: the relaxation can be read as a plan.</summary>
    public static (Counted What, int Index, int Class, int At, double Value)? Of(Model model, Relaxed relaxed)
    {
        var counts = new SortedDictionary<(Counted What, int Index, int Class, int At), double>();
        foreach (var (column, level) in relaxed.Levels)
        {
            if (column.Stock(model) is >= 0 and var stock)
                for (var set = 0; set < model.Sets.Length; set++) if (model.Sets[set][stock]) Count((Counted.Stock, set, 0, 0), level);
            if (column.Ripping >= 0) Count((Counted.Ripping, column.Ripping, 0, 0), level);
            if (column.Shortage >= 0) Count((Counted.Shortage, column.Shortage, 0, 0), level);
        }
        // The largest set that is well broken first: it moves the bound most.
        for (var set = 0; set < model.Sets.Length; set++)
            if (counts.TryGetValue((Counted.Stock, set, 0, 0), out var value) && Math.Abs(value - Math.Round(value)) > 0.1) return (Counted.Stock, set, 0, 0, value);
        if (Most(counts) is { } board) return board;
        counts.Clear();
        foreach (var (column, level) in relaxed.Levels)
            foreach (var (at, item) in column.Path(model)) Count((Counted.Place, item, column.Lane!.Class, at), level);
        return Most(counts);

        void Count((Counted, int, int, int) key, double level) => counts[key] = counts.GetValueOrDefault(key) + level;
    }

    /// <summary>The most nearly half broken; the first in order among equals.</summary>
    private static (Counted, int, int, int, double)? Most(SortedDictionary<(Counted What, int Index, int Class, int At), double> counts)
    {
        var (found, by) = (((Counted, int, int, int, double)?)null, Broken);
        foreach (var (key, value) in counts)
        {
            var broken = Math.Abs(value - Math.Round(value));
            // What begins near the strip's end decides less than what begins at its head.
            var weight = broken > Broken ? broken / (1 + key.At * 1e-4) : 0;
            if (weight <= by + 1e-9) continue;
            (found, by) = ((key.What, key.Index, key.Class, key.At, value), weight);
        }
        return found;
    }
}
