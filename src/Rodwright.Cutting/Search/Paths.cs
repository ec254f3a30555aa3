using Rodwright.Cutting.Models;

namespace Rodwright.Cutting.Search;

/// <summary>
/// Reads a relaxation whose counts are all whole as a plan: what passes each place of the strips is whole, so it parts into whole paths, and the whole numbers of strips take
/// them.
/// </summary>
internal static class Paths
{
    /// <summary>The plan; null where rounding has misled.</summary>
    public static Remainder? Read(Model model, Relaxed relaxed)
    {
        var rest = Remainder.Whole(model);
        foreach (var (column, level) in relaxed.Levels.Where(l => l.Column.Lane is null))
        {
            if (rest.With(column, (int)Math.Round(level)) is not { } with) return null;
            rest = with;
        }
        for (var k = 0; k < model.Widths.Length; k++)
        {
            var flow = new SortedDictionary<(int At, int Item), double>();
            foreach (var (column, level) in relaxed.Levels.Where(l => l.Column.Lane?.Class == k))
                foreach (var step in column.Path(model)) flow[step] = flow.GetValueOrDefault(step) + level;
            var whole = new SortedDictionary<(int At, int Item), int>();
            foreach (var (step, value) in flow) if ((int)Math.Round(value) is > 0 and var n) whole[step] = n;
            var strips = model.Lanes.Where(l => l.Class == k).OrderBy(l => l.Capacity)
                .Select(l => (Lane: l, Left: l.IsWholeBoard ? (int)Math.Round(relaxed.Levels.Where(x => x.Column.Lane == l).Sum(x => x.Level)) : -rest.Owed[l.Index])).ToArray();
            foreach (var (end, counts) in Part(model, whole).OrderByDescending(p => p.End))
            {
                var at = Array.FindIndex(strips, s => s.Left > 0 && s.Lane.Capacity >= end);
                if (at < 0) return null;
                strips[at].Left--;
                if (rest.With(Column.Pattern(model, strips[at].Lane, counts), 1) is not { } with) return null;
                rest = with;
            }
        }
        return rest.IsDone ? rest : null;
    }

    private static List<(int End, int[] Counts)> Part(Model model, SortedDictionary<(int At, int Item), int> flow)
    {
        var paths = new List<(int, int[])>();
        while (true)
        {
            var (at, counts) = (0, new int[model.Items]);
            while (flow.Keys.Where(s => s.At == at).Select(s => ((int At, int Item)?)s).FirstOrDefault() is { } step)
            {
                if (--flow[step] == 0) flow.Remove(step);
                counts[step.Item]++;
                at += model.Weight[step.Item];
            }
            if (at == 0) return paths;
            paths.Add((at, counts));
        }
    }
}
