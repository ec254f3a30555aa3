using Rodwright.Cutting.Linear;
using Rodwright.Cutting.Models;

namespace Rodwright.Cutting.Search;

/// <summary>What the relaxation of a remainder says.</summary>
/// <param name="Value">Its cost, as far as patterns were generated.</param>
/// <param name="Bound">What no plan for the remainder goes below: proven in whole numbers, raised to the next total that costs can add up to.</param>
/// <param name="Levels">Columns with how often each is taken, broken numbers included.</param>
/// <param name="IsShort">Whether the branches leave nothing that can be had.</param>
/// <param name="Near">Patterns that are taken or nearly pay: what programs under one branch more begin with.</param>
/// <param name="Basis">Where it ended: for each row a column, or the number of a slack.</param>
internal sealed record Relaxed(double Value, long Bound, List<(Column Column, double Level)> Levels, bool IsShort, List<Column> Near, List<(Column? Column, int Slack)> Basis);

/// <summary>
/// The relaxation over all patterns, of which only those are made that pay: linear program and knapsack by turns. The bound is Lagrange's: prices rounded to whole numbers
/// are put to an exact knapsack, so that no rounding of the linear program can raise it.
/// </summary>
internal sealed class Master
{
    private readonly Model model;
    private readonly Toil toil;
    private readonly List<Column> always = [];
    private readonly List<Column> pool = [];
    private readonly Dictionary<Column, Column> known = new(new Column.SamePattern());
    private readonly Knapsack[] knapsacks;
    private readonly long dearest;
    private int[] held = [];

    public Master(Model model, Toil toil)
    {
        (this.model, this.toil) = (model, toil);
        for (var r = 0; r < model.Rippings.Length; r++) always.Add(Column.Ripped(model, r));
        for (var i = 0; i < model.Items; i++) if (model.Shortage[i] > 0) always.Add(Column.Uncut(model, i));
        // One for each class that branches at places set apart; the last one, the common one, has room for every strip.
        var room = model.Lanes.Select(l => l.Capacity).DefaultIfEmpty(0).Max();
        knapsacks = [.. model.Widths.Append(0).Select(_ => new Knapsack(model.Weight, room))];
        dearest = Math.Max(1, Math.Max(model.Lanes.Select(l => l.Cost).Concat(model.Rippings.Select(r => r.Cost)).DefaultIfEmpty(0).Max(), model.Shortage.DefaultIfEmpty(0).Max()));
    }

    public int Patterns => pool.Count;

    /// <summary>Keeps a pattern for the programs to come.</summary>
    public void Keep(Column column) => Known(column).HasServed = true;

    /// <summary>The same pattern as it was first made.</summary>
    private Column Known(Column column)
    {
        if (known.TryGetValue(column, out var first)) return first;
        pool.Add(column);
        return known[column] = column;
    }

    /// <summary>The relaxation of a remainder under branches.</summary>
    /// <param name="rest">What is still wanted.</param>
    /// <param name="branches">Counts that are held.</param>
    /// <param name="enough">A bound at or above this decides: no more is asked.</param>
    /// <param name="begin">Where to begin: the relaxation of the same remainder under all branches but the last. When null, with all patterns that have served.</param>
    public Relaxed Solve(Remainder rest, IReadOnlyList<Branch> branches, long enough, Relaxed? begin = null)
    {
        var penalty = 10.0 * dearest;
        while (true)
        {
            var relaxed = Solve(rest, branches, enough, penalty, begin);
            if (!relaxed.IsShort || relaxed.Bound >= enough || penalty > 5e3 * dearest || toil.IsSpent) return relaxed;
            penalty *= 30;
        }
    }

    private Relaxed Solve(Remainder rest, IReadOnlyList<Branch> branches, long enough, double penalty, Relaxed? begin)
    {
        var program = Program(rest, branches, penalty, begin, out var columns);
        var pricing = new Pricing(model, rest, branches, knapsacks, dearest);
        var (bound, there) = (0L, columns.Where(c => c is not null).ToHashSet());
        while (true)
        {
            var before = program.Steps;
            program.Solve();
            toil.Spend(program.Steps - before);
            var better = pricing.Price(program.Duals);
            toil.Spend(pricing.TakeSteps());
            bound = Math.Max(bound, pricing.Bound);
            var rounded = program.IsShort ? long.MaxValue : Up(program.Value - 1e-6 * Math.Max(1, Math.Abs(program.Value) * 1e-3));
            if (better.Count == 0 || bound >= enough || bound >= rounded || toil.IsSpent) break;
            var some = false;
            foreach (var found in better)
            {
                var column = Known(found);
                if (!there.Add(column)) continue;
                some = true;
                Add(program, columns, column, branches);
            }
            // Only rounding can ask for a pattern that is in the program already.
            if (!some) break;
        }
        var levels = program.Levels().Where(l => columns[l.Column] is not null).Select(l => (columns[l.Column]!, l.Level)).ToList();
        foreach (var (column, _) in levels) column.HasServed = true;
        var near = new List<Column>();
        for (var c = 0; c < columns.Count; c++) if (columns[c] is { Lane: not null } column && program.Reduced(c) < 0.1 * dearest) near.Add(column);
        List<(Column?, int)> basis = [.. program.Basis().Select(b => b < 0 ? (null, b) : (columns[b], 0))];
        return new(program.Value, bound, levels, program.IsShort, near, basis);
    }

    private long Up(double value) => (long)Math.Ceiling(Math.Max(0, value) / model.Step) * model.Step;

    private Simplex Program(Remainder rest, IReadOnlyList<Branch> branches, double penalty, Relaxed? begin, out List<Column?> columns)
    {
        var right = new double[model.Rows + branches.Count];
        var least = new bool[right.Length];
        for (var i = 0; i < model.Items; i++) (right[i], least[i]) = (rest.Demand[i], true);
        for (var s = 0; s < rest.Limits.Length; s++) if (model.LimitRow[s] is >= 0 and var row) right[row] = rest.Limits[s]!.Value;
        foreach (var lane in model.Lanes.Where(l => !l.IsWholeBoard)) (right[lane.FedRow], least[lane.FedRow]) = (rest.Owed[lane.Index], true);
        for (var b = 0; b < branches.Count; b++) (right[model.Rows + b], least[model.Rows + b]) = (branches[b].Limit, branches[b].IsLeast);
        var program = new Simplex(right, least, penalty) { Scale = dearest };
        columns = [.. Enumerable.Repeat<Column?>(null, program.Columns)];
        foreach (var column in always.Concat(begin?.Near ?? pool.Where(c => c.HasServed))) if (rest.Wants(column)) Add(program, columns, column, branches);
        if (begin is null) return program;
        var numbers = new Dictionary<Column, int>();
        for (var c = 0; c < columns.Count; c++) if (columns[c] is { } column) numbers[column] = c;
        if (begin.Basis.TrueForAll(b => b.Column is null || numbers.ContainsKey(b.Column))) program.Begin([.. begin.Basis.Select(b => b.Column is { } column ? numbers[column] : b.Slack)]);
        while (columns.Count < program.Columns) columns.Add(null);
        return program;
    }

    private void Add(Simplex program, List<Column?> columns, Column column, IReadOnlyList<Branch> branches)
    {
        if (held.Length < branches.Count) held = new int[2 * branches.Count];
        var more = 0;
        for (var b = 0; b < branches.Count; b++) if (branches[b].Counts(model, column)) held[more++] = model.Rows + b;
        program.Add(column.Cost, column.Rows, column.Values, held.AsSpan(0, more));
        columns.Add(column);
    }
}
