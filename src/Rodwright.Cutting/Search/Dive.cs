using Rodwright.Cutting.Models;

namespace Rodwright.Cutting.Search;

/// <summary>Whole plans from broken ones: what the relaxation takes whole is taken, then what it takes most nearly whole, and the remainder is relaxed anew.</summary>
internal sealed class Dive(Model model, Master master, Incumbent best, Toil toil)
{
    private const double Whole = 1 - 1e-6;

    /// <summary>Looks for a better plan.</summary>
    /// <param name="rest">Where to begin.</param>
    /// <param name="others">How many times, on the way down, another choice than the first is made.</param>
    /// <param name="floor">A plan of this cost cannot be bettered.</param>
    public void Try(Remainder rest, int others, long floor)
    {
        if (toil.IsSpent || best.Limit <= floor) return;
        if (rest.IsDone)
        {
            best.Offer(rest);
            return;
        }
        var relaxed = master.Solve(rest, [], best.Limit - rest.Cost);
        if (relaxed.IsShort || rest.Cost + relaxed.Bound >= best.Limit) return;
        Down(rest, relaxed, others, floor);
    }

    /// <summary>Goes on from a relaxation, made under branches perhaps: they choose where it begins and nothing more.</summary>
    public void Down(Remainder rest, Relaxed relaxed, int others, long floor)
    {
        var taken = relaxed.Levels.Where(l => l.Column.Lane is null || l.Column.Counts.Any(c => c > 0)).ToList();
        var sure = taken.Where(l => l.Level >= Whole).ToList();
        foreach (var (column, level) in sure)
        {
            if (rest.With(column, (int)(level + 1 - Whole)) is not { } with) return;
            rest = with;
        }
        if (sure.Count > 0)
        {
            if (model.Rippings.Length == 0 && Greedy.Finish(rest, master, toil) is { } done) best.Offer(done);
            Try(rest, others, floor);
            return;
        }
        var choices = taken.OrderByDescending(l => l.Level).ThenByDescending(l => Filled(l.Column)).Take(others + 1).ToList();
        for (var i = 0; i < choices.Count; i++)
            if (rest.With(choices[i].Column, 1) is { } with) Try(with, others - i, floor);
    }

    private double Filled(Column column) => column.Lane is { } lane ? column.Counts.Select((c, i) => (double)c * model.Weight[i]).Sum() / lane.Capacity : 1;
}
