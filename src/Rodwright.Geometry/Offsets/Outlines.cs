namespace Rodwright.Geometry.Offsets;

/// <summary>Outlines taken apart into stretches, and put together again.</summary>
internal static class Outlines
{
    /// <summary>Shorter stretches, mm, are nothing.</summary>
    public const double Least = 1e-7;

    // A shallower arc than this, half a hundredth of a millimetre deep in a metre, is taken as straight: its centre lies so far off that nothing is found from it.
    private const double Shallow = 1e-5;

    // How near the end of one stretch and the start of the next must lie to be one point.
    private const double Joined = 3e-5;

    // How far, mm, an end may stick out that is still within rounding of its distance.
    private const double Overshot = 0.05;

    /// <summary>Every edge of some closed outlines.</summary>
    public static IEnumerable<Stretch> Edges(IReadOnlyList<Path2> outlines) =>
        from path in outlines
        from i in Enumerable.Range(0, path.EdgeCount)
        let edge = path.Edge(i)
        where edge.From.DistanceTo(edge.To) > Least
        select new Stretch(edge.From, edge.To, Math.Abs(edge.Bulge) < Shallow ? 0 : edge.Bulge);

    /// <summary>A stretch cut at some parts of its way, in order; what is shorter than <see cref="Least"/> is left out.</summary>
    public static IEnumerable<Stretch> Cut(Stretch stretch, IEnumerable<double> at)
    {
        var from = 0.0;
        foreach (var to in at.Append(1).Order())
        {
            if ((to - from) * stretch.Length <= Least) continue;
            // A last bit too short to stand alone goes to the one before it.
            yield return stretch.Between(from, (1 - to) * stretch.Length <= Least ? 1 : to);
            from = to;
        }
    }

    /// <summary>Stretches that lie end to end as closed outlines; false when one leads nowhere.</summary>
    public static bool TryClose(IReadOnlyList<Stretch> stretches, out List<Path2> outlines, double overshot = Overshot)
    {
        outlines = [];
        var (starts, ends) = (Places(stretches, s => s.From), Places(stretches, s => s.To));
        var used = new bool[stretches.Count];
        // Two edges that all but touch cross in a point that is hard to tell: what of them sticks out past it is dropped.
        for (var dropped = true; dropped;)
        {
            dropped = false;
            for (var i = 0; i < stretches.Count; i++)
            {
                if (used[i] || stretches[i].Length > overshot) continue;
                if (At(starts, stretches[i].To, s => s.From).Any(k => k != i) && At(ends, stretches[i].From, s => s.To).Any(k => k != i)) continue;
                used[i] = dropped = true;
            }
        }
        for (var i = 0; i < stretches.Count; i++)
        {
            if (used[i]) continue;
            var run = new List<int> { i };
            used[i] = true;
            while (stretches[run[^1]].To.DistanceTo(stretches[i].From) > Joined)
            {
                if (Next(run[^1]) is not { } next) return false;
                used[next] = true;
                run.Add(next);
            }
            // A single stretch that ends where it starts would be a full circle: none is made.
            if (run.Count > 1) outlines.Add(new(run.Select(k => new Vertex2(stretches[k].From, stretches[k].Bulge)), true));
        }
        return true;

        int? Next(int at)
        {
            var arriving = stretches[at].Arriving;
            int? best = null;
            var most = double.NegativeInfinity;
            foreach (var k in At(starts, stretches[at].To, s => s.From))
            {
                // Where outlines touch in a point each keeps to itself: the sharpest turn to the left.
                var turn = Angle.Atan2(arriving.Cross(stretches[k].Leaving), arriving.Dot(stretches[k].Leaving));
                if (turn > most) (best, most) = (k, turn);
            }
            return best;
        }

        IEnumerable<int> At(Dictionary<(long, long), List<int>> places, Point2 p, Func<Stretch, Point2> end)
        {
            var (x, y) = Cell(p);
            for (var dx = -1; dx <= 1; dx++)
                for (var dy = -1; dy <= 1; dy++)
                    if (places.TryGetValue((x + dx, y + dy), out var there))
                        foreach (var k in there)
                            if (!used[k] && end(stretches[k]).DistanceTo(p) <= Joined) yield return k;
        }
    }

    private static Dictionary<(long, long), List<int>> Places(IReadOnlyList<Stretch> stretches, Func<Stretch, Point2> end)
    {
        var places = new Dictionary<(long, long), List<int>>();
        for (var i = 0; i < stretches.Count; i++)
        {
            var cell = Cell(end(stretches[i]));
            if (!places.TryGetValue(cell, out var there)) places[cell] = there = [];
            there.Add(i);
        }
        return places;
    }

    private static (long, long) Cell(Point2 p) => ((long)Math.Floor(p.X / (4 * Joined)), (long)Math.Floor(p.Y / (4 * Joined)));
}
