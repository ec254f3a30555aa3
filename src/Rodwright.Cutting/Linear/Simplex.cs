using System.Numerics;
using System.Runtime.CompilerServices;

namespace Rodwright.Cutting.Linear;

/// <summary>
/// A linear program that columns are added to: least cost, every column at least 0, every row at least (or at most) its right side. Primal simplex with a dense inverse,
/// begun again after every pattern. What it says is a guide; bounds are proven elsewhere in whole numbers.
/// </summary>
internal sealed class Simplex
{
    private const double Tiny = 1e-9;
    private readonly int rows;
    private readonly double[] right;
    private readonly double penalty;
    // The columns' entries, one column after the other: those of column j from begins[j] on.
    private int[] at = new int[256];
    private double[] values = new double[256];
    private int[] begins = new int[65];
    private double[] costs = new double[64];
    private bool[] isBasic = new bool[64];
    private readonly int[] basis;
    private readonly double[] level;
    private readonly double[] dual;
    private readonly double[] inverse;
    private readonly int[] slack;
    private readonly int[] bought;
    private int pivots;

    // The level below 0 that the last inverse gave; 0 for none but by rounding.
    private double least;

    /// <summary>A program of rows without columns.</summary>
    /// <param name="right">Right sides.</param>
    /// <param name="isLeast">Whether a row is at least its right side; else at most.</param>
    /// <param name="penalty">What falling short of a row costs by the unit.</param>
    public Simplex(double[] right, bool[] isLeast, double penalty)
    {
        (rows, this.right, this.penalty) = (right.Length, right, penalty);
        (basis, level, dual) = (new int[rows], [.. right.Select(Math.Abs)], new double[rows]);
        (inverse, slack, bought) = (new double[rows * rows], new int[rows], new int[rows]);
        for (var i = 0; i < rows; i++)
        {
            // Slack or surplus, basic where it can be; else the row is bought.
            slack[i] = Add(0, [i], [isLeast[i] ? -1 : 1]);
            var isReady = isLeast[i] ? right[i] <= 0 : right[i] >= 0;
            bought[i] = isReady ? -1 : Add(penalty, [i], [right[i] >= 0 ? 1 : -1]);
            basis[i] = isReady ? slack[i] : bought[i];
            isBasic[basis[i]] = true;
            inverse[i * rows + i] = 1 / values[begins[basis[i]]];
        }
    }

    /// <summary>Steps taken so far.</summary>
    public long Steps { get; private set; }

    /// <summary>Cost at the present levels.</summary>
    public double Value { get; private set; }

    /// <summary>How many columns there are, slacks and what rows are bought with included.</summary>
    public int Columns { get; private set; }

    /// <summary>Price of each row.</summary>
    public double[] Duals => dual;

    /// <summary>Whether a row is still bought at the penalty.</summary>
    public bool IsShort => Enumerable.Range(0, rows).Any(i => costs[basis[i]] == penalty && level[i] > 1e-7);

    /// <summary>What a column would add to the cost for each unit, at the present prices.</summary>
    // A plan is over before a method made quickly first would be made again well.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Reduced(int column)
    {
        var cost = costs[column];
        for (var k = begins[column]; k < begins[column + 1]; k++) cost -= dual[at[k]] * values[k];
        return cost;
    }

    /// <summary>Adds a column; its number.</summary>
    /// <param name="cost">Of one.</param>
    /// <param name="rowsOf">Rows it stands in.</param>
    /// <param name="valuesOf">With what.</param>
    /// <param name="ones">Rows it stands in with 1, besides.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Add(double cost, int[] rowsOf, double[] valuesOf, ReadOnlySpan<int> ones = default)
    {
        var (first, end) = (begins[Columns], begins[Columns] + rowsOf.Length + ones.Length);
        if (end > at.Length)
        {
            Array.Resize(ref at, 2 * end);
            Array.Resize(ref values, 2 * end);
        }
        if (Columns == costs.Length)
        {
            Array.Resize(ref costs, 2 * Columns);
            Array.Resize(ref isBasic, 2 * Columns);
            Array.Resize(ref begins, 2 * Columns + 1);
        }
        rowsOf.CopyTo(at, first);
        valuesOf.CopyTo(values, first);
        ones.CopyTo(at.AsSpan(first + rowsOf.Length));
        values.AsSpan(first + rowsOf.Length, ones.Length).Fill(1);
        (costs[Columns], isBasic[Columns], begins[Columns + 1]) = (cost, false, end);
        return Columns++;
    }

    /// <summary>Level of every column that is above 0.</summary>
    public IEnumerable<(int Column, double Level)> Levels() => Enumerable.Range(0, rows).Where(i => level[i] > Tiny).Select(i => (basis[i], level[i]));

    /// <summary>What is basic in each row: a column that was added, or -1 - 2r for the slack of row r and -2 - 2r for what it is bought with.</summary>
    public int[] Basis()
    {
        var found = new int[rows];
        for (var i = 0; i < rows; i++)
        {
            var r = at[begins[basis[i]]];
            found[i] = basis[i] == slack[r] ? -1 - 2 * r : basis[i] == bought[r] ? -2 - 2 * r : basis[i];
        }
        return found;
    }

    /// <summary>
    /// Begins where a program ended that had the same rows but the last: its basis, in the words of <see cref="Basis"/>, and in the last row its slack, or what it is bought with. As that
    /// was at a corner, so is this. Nothing is changed where rounding has it otherwise.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Begin(int[] from)
    {
        if (from.Length != rows - 1) return;
        var (before, levels) = ((int[])basis.Clone(), (double[])level.Clone());
        var last = rows - 1;
        for (var i = 0; i < last; i++)
        {
            basis[i] = from[i] >= 0 ? from[i] : (-1 - from[i]) % 2 == 0 ? slack[(-1 - from[i]) / 2] : bought[(-2 - from[i]) / 2];
            if (basis[i] >= 0) continue;
            before.CopyTo(basis, 0);
            return;
        }
        basis[last] = slack[last];
        var there = (double[])inverse.Clone();
        var isGood = Invert();
        if (isGood && least < 0)
        {
            // The row is not met: bought, from the other side.
            var other = bought[last] >= 0 && values[begins[bought[last]]] * values[begins[slack[last]]] < 0 ? bought[last] : bought[last] = Add(penalty, [last], [-values[begins[slack[last]]]]);
            basis[last] = other;
            isGood = Invert();
        }
        if (!isGood || least < 0)
        {
            before.CopyTo(basis, 0);
            levels.CopyTo(level, 0);
            there.CopyTo(inverse, 0);
            return;
        }
        foreach (var b in before) isBasic[b] = false;
        foreach (var b in basis) isBasic[b] = true;
    }

    /// <summary>Goes on to the least cost over the columns there are.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Solve()
    {
        var still = 0;
        var direction = new double[rows];
        Price();
        while (true)
        {
            var entering = Entering(still > 60, out var reduced);
            if (entering < 0) break;
            Array.Clear(direction);
            for (var k = begins[entering]; k < begins[entering + 1]; k++) AddTo(direction, inverse.AsSpan(at[k] * rows, rows), values[k]);
            var leaving = Leaving(direction, still > 60);
            // Costs are never below 0, so nothing runs away; only rounding could say so.
            if (leaving < 0) break;
            still = level[leaving] <= Tiny ? still + 1 : 0;
            Pivot(entering, leaving, direction, reduced);
        }
        Price();
        Value = Enumerable.Range(0, rows).Sum(i => costs[basis[i]] * level[i]);
    }

    // The inverse is kept column by column: the entry of row i and column j stands at j * rows + i.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Price()
    {
        var own = basis.Select(b => costs[b]).ToArray();
        for (int j = 0, p = 0; j < rows; j++, p += rows)
        {
            var sum = 0.0;
            for (var i = 0; i < rows; i++) sum += own[i] * inverse[p + i];
            dual[j] = sum;
        }
        Steps += (long)rows * rows;
    }

    private int Entering(bool first, out double reduced)
    {
        var found = -1;
        reduced = -1e-9 * Math.Max(1, Scale);
        for (int j = 0, k = 0; j < Columns; j++)
        {
            var cost = costs[j];
            var end = begins[j + 1];
            if (isBasic[j] || cost == penalty)
            {
                k = end;
                continue;
            }
            for (; k < end; k++) cost -= dual[at[k]] * values[k];
            if (cost >= reduced) continue;
            (reduced, found) = (cost, j);
            if (first) break;
        }
        Steps += Columns * 8L;
        return found;
    }

    /// <summary>Greatest cost of a column that is not the penalty.</summary>
    public double Scale { get; init; } = 1;

    // Bland's rule, once nothing has moved for long: the first column in, and of those that may leave the first, cannot go round in a circle.
    private int Leaving(double[] direction, bool first)
    {
        var (least, found) = (double.PositiveInfinity, -1);
        for (var i = 0; i < rows; i++)
        {
            if (direction[i] <= 1e-8) continue;
            var ratio = level[i] / direction[i];
            if (ratio < least - 1e-11 || ratio < least + 1e-11 && (found < 0 || (first ? basis[i] < basis[found] : direction[i] > direction[found]))) (least, found) = (Math.Min(ratio, least), i);
        }
        return found;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Pivot(int entering, int leaving, double[] direction, double reduced)
    {
        var step = Math.Max(0, level[leaving] / direction[leaving]);
        for (var i = 0; i < rows; i++) level[i] = i == leaving ? step : Math.Max(0, level[i] - step * direction[i]);
        var turn = 1 / direction[leaving];
        for (int j = 0, p = 0; j < rows; j++, p += rows)
        {
            var r = inverse[p + leaving];
            if (r == 0) continue;
            r *= turn;
            AddTo(inverse.AsSpan(p, rows), direction, -r);
            inverse[p + leaving] = r;
            dual[j] += reduced * r;
        }
        (isBasic[basis[leaving]], isBasic[entering]) = (false, true);
        basis[leaving] = entering;
        Steps += (long)rows * rows;
        if (++pivots % 80 != 0) return;
        _ = Invert();
        Price();
    }

    /// <summary>Adds so many times one row of numbers to another. Entry by entry: the same however many are done at once.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void AddTo(Span<double> to, ReadOnlySpan<double> from, double times)
    {
        var (wide, i) = (new Vector<double>(times), 0);
        for (; i <= to.Length - Vector<double>.Count; i += Vector<double>.Count)
            (new Vector<double>(to[i..]) + new Vector<double>(from[i..]) * wide).CopyTo(to[i..]);
        for (; i < to.Length; i++) to[i] += from[i] * times;
    }

    /// <summary>The inverse worked out anew from the basis, so that rounding does not gather.</summary>
    /// <returns>False, and nothing changed, where the basis is as good as singular.</returns>
    private bool Invert()
    {
        var n = rows;
        var work = new double[n * n];
        for (var j = 0; j < n; j++)
        {
            for (var k = begins[basis[j]]; k < begins[basis[j] + 1]; k++) work[at[k] * n + j] = values[k];
        }
        var made = new double[n * n];
        for (var i = 0; i < n; i++) made[i * n + i] = 1;
        for (var c = 0; c < n; c++)
        {
            var p = c;
            for (var i = c + 1; i < n; i++) if (Math.Abs(work[i * n + c]) > Math.Abs(work[p * n + c])) p = i;
            if (Math.Abs(work[p * n + c]) < 1e-10) return false;
            if (p != c) for (var k = 0; k < n; k++)
            {
                (work[p * n + k], work[c * n + k]) = (work[c * n + k], work[p * n + k]);
                (made[p * n + k], made[c * n + k]) = (made[c * n + k], made[p * n + k]);
            }
            var d = 1 / work[c * n + c];
            for (var k = 0; k < n; k++) { work[c * n + k] *= d; made[c * n + k] *= d; }
            for (var i = 0; i < n; i++)
            {
                var f = work[i * n + c];
                if (i == c || f == 0) continue;
                AddTo(work.AsSpan(i * n + c, n - c), work.AsSpan(c * n + c, n - c), -f);
                AddTo(made.AsSpan(i * n, n), made.AsSpan(c * n, n), -f);
            }
        }
        for (var i = 0; i < n; i++) for (var j = 0; j < n; j++) inverse[j * n + i] = made[i * n + j];
        least = 0;
        for (var i = 0; i < n; i++)
        {
            var sum = 0.0;
            for (var j = 0; j < n; j++) sum += inverse[j * n + i] * right[j];
            level[i] = Math.Max(0, sum);
            if (sum < -1e-7) least = Math.Min(least, sum);
        }
        Steps += (long)n * n * n / 2;
        return true;
    }
}
