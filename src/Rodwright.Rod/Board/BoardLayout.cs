using Rodwright.Geometry;

namespace Rodwright.Rod.Board;

/// <summary>
/// Lays pieces out on the board: rows from the top, in the order of the stages, perhaps one group below the plan; such that the board comes out well shaped
/// and little of it is bare. Judged by sizes in coarse steps, so that a small change of a number leaves every piece in its row.
/// </summary>
internal static class BoardLayout
{
    private const double Margin = 20; // round all, mm
    private const double Gap = 20; // between pieces, mm
    private const double Coarse = 60; // mm
    private const int MostRows = 4;
    private const int LongRow = 4;
    private const double Shape = 1.55; // width to height that suits a screen and a wall

    /// <summary>The board's size, and the lower left corner of each piece.</summary>
    /// <param name="pieces">In order, the plan first.</param>
    /// <param name="mirrored">Whether rows run from right to left.</param>
    public static (Vector2 Size, IReadOnlyList<Point2> Corners) Lay(IReadOnlyList<PieceDraft> pieces, bool mirrored)
    {
        Arrangement? best = null;
        var least = double.PositiveInfinity;
        foreach (var arrangement in All(pieces))
        {
            var cost = Cost(pieces, arrangement);
            if (cost < least - 1e-9) (best, least) = (arrangement, cost);
        }
        return Place(pieces, best!, mirrored);
    }

    /// <summary>Rows of columns of rows of pieces: only the plan's column has more than one row.</summary>
    private sealed record Arrangement(IReadOnlyList<IReadOnlyList<IReadOnlyList<IReadOnlyList<int>>>> Rows);

    private static IEnumerable<Arrangement> All(IReadOnlyList<PieceDraft> pieces)
    {
        var kinds = pieces.Skip(1).Select(p => (BoardPieceKind?)p.Kind).Distinct().Prepend(null);
        foreach (var below in kinds)
        {
            var under = Enumerable.Range(1, pieces.Count - 1).Where(i => pieces[i].Kind == below).ToList();
            var rest = Enumerable.Range(1, pieces.Count - 1).Except(under).ToList();
            // Rows break between groups; a long row of like pieces may break within.
            var breaks = Enumerable.Range(0, rest.Count)
                .Where(i => i == 0 || pieces[rest[i]].Kind != pieces[rest[i - 1]].Kind || rest.Count(r => pieces[r].Kind == pieces[rest[i]].Kind) > LongRow).ToList();
            foreach (var at in Some(breaks, MostRows - 1))
            {
                var rows = new List<IReadOnlyList<IReadOnlyList<IReadOnlyList<int>>>>();
                var from = 0;
                foreach (var to in at.Append(rest.Count))
                {
                    rows.Add(Row(pieces, rest[from..to], rows.Count == 0 ? under : null));
                    from = to;
                }
                yield return new(rows);
            }
        }
    }

    /// <summary>Pieces side by side; those of one kind one below another, as many as the tallest piece of the row leaves room for.</summary>
    private static List<IReadOnlyList<IReadOnlyList<int>>> Row(IReadOnlyList<PieceDraft> pieces, List<int> row, List<int>? underPlan)
    {
        var columns = new List<IReadOnlyList<IReadOnlyList<int>>>();
        var tallest = row.Select(i => Up(pieces[i].Height)).DefaultIfEmpty(0).Max();
        if (underPlan is not null)
        {
            columns.Add(underPlan.Count == 0 ? [[0]] : [[0], underPlan]);
            tallest = Math.Max(tallest, Up(pieces[0].Height) + underPlan.Select(i => Up(pieces[i].Height)).DefaultIfEmpty(0).Max());
        }
        var (open, high) = (new List<IReadOnlyList<int>>(), 0.0);
        foreach (var i in row)
        {
            var own = Up(pieces[i].Height);
            if (open.Count > 0 && pieces[open[^1][0]].Kind == pieces[i].Kind && high + own <= 1.15 * tallest)
            {
                open.Add([i]);
                high += own;
                continue;
            }
            columns.Add(open = [[i]]);
            high = own;
        }
        return columns;
    }

    private static IEnumerable<int[]> Some(List<int> places, int most, int from = 0)
    {
        yield return [];
        if (most == 0) yield break;
        for (var at = from; at < places.Count; at++)
            foreach (var rest in Some(places, most - 1, at + 1)) yield return [places[at], .. rest];
    }

    private static double Cost(IReadOnlyList<PieceDraft> pieces, Arrangement arrangement)
    {
        var (size, corners) = Corners(arrangement, i => Up(pieces[i].Width), i => Up(pieces[i].Height));
        var filled = pieces.Sum(p => Up(p.Width) * Up(p.Height)) / (size.X * size.Y);
        var off = Math.Abs(Math.Log(size.X / size.Y / Shape));
        return 1.5 * Math.Max(0, off - 0.06) + (1 - filled);
    }

    private static double Up(double size) => Math.Ceiling(size / Coarse) * Coarse;

    private static (Vector2 Size, IReadOnlyList<Point2> Corners) Place(IReadOnlyList<PieceDraft> pieces, Arrangement arrangement, bool mirrored)
    {
        var (size, corners) = Corners(arrangement, i => pieces[i].Width, i => pieces[i].Height);
        return mirrored ? (size, [.. corners.Select((c, i) => new Point2(size.X - c.X - pieces[i].Width, c.Y))]) : (size, corners);
    }

    private static (Vector2 Size, Point2[] Corners) Corners(Arrangement arrangement, Func<int, double> width, Func<int, double> height)
    {
        var corners = new Point2[arrangement.Rows.Sum(r => r.Sum(c => c.Sum(p => p.Count)))];
        var (across, y) = (0.0, -Margin);
        foreach (var row in arrangement.Rows)
        {
            var (x, deep) = (Margin, 0.0);
            foreach (var column in row)
            {
                var (wide, down) = (0.0, 0.0);
                foreach (var line in column)
                {
                    if (down > 0) down += Gap;
                    var (along, high) = (0.0, 0.0);
                    foreach (var i in line)
                    {
                        if (along > 0) along += Gap;
                        corners[i] = new(x + along, y - down - height(i));
                        along += width(i);
                        high = Math.Max(high, height(i));
                    }
                    wide = Math.Max(wide, along);
                    down += high;
                }
                x += wide + Gap;
                deep = Math.Max(deep, down);
            }
            across = Math.Max(across, x - Gap);
            y -= deep + Gap;
        }
        var size = new Vector2(across + Margin, -y - Gap + Margin);
        for (var i = 0; i < corners.Length; i++) corners[i] += new Vector2(0, size.Y);
        return (size, corners);
    }
}
