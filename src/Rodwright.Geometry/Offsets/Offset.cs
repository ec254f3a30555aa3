namespace Rodwright.Geometry.Offsets;

/// <summary>
/// Areas grown or shrunk by a distance, exactly: straight edges give straight edges, arcs arcs, and round a corner the offset runs in an arc of that distance.
/// Every point of the result lies at the distance from the outlines, none nearer.
/// </summary>
public static class Offset
{
    // How much nearer than the distance rounding may bring a point that lies at it.
    private const double Slack = 1e-6;

    /// <summary>An area grown (positive) or shrunk (negative).</summary>
    /// <param name="outline">Closed; anticlockwise round an area, clockwise round a hole or round all that is not the area.</param>
    /// <param name="by">mm.</param>
    public static IReadOnlyList<Path2> Of(Path2 outline, double by) => Of([outline], by);

    /// <summary>An area grown or shrunk: outer outlines anticlockwise, holes clockwise; none where nothing is left.</summary>
    /// <param name="outlines">What bounds the area, which lies to their left; they do not cross.</param>
    /// <param name="by">mm, positive to grow it.</param>
    /// <exception cref="ArgumentException">The outlines are not closed, or cross one another.</exception>
    public static IReadOnlyList<Path2> Of(IReadOnlyList<Path2> outlines, double by)
    {
        if (outlines.Any(o => !o.Closed)) throw new ArgumentException("an area is bounded by closed outlines", nameof(outlines));
        return TryOf(outlines, by, out var grown) ? grown : throw new ArgumentException("these outlines cross one another", nameof(outlines));
    }

    /// <summary>The same where it is not known whether outlines cross or touch so closely that rounding decides; false when no closed outlines come of them.</summary>
    /// <param name="outlines">What bounds the area; closed.</param>
    /// <param name="by">mm, positive to grow it.</param>
    /// <param name="grown">The area grown or shrunk.</param>
    public static bool TryOf(IReadOnlyList<Path2> outlines, double by, out IReadOnlyList<Path2> grown)
    {
        grown = outlines;
        if (by == 0 || outlines.Count == 0) return true;
        var edges = Outlines.Edges(outlines).ToList();
        // Where by chance three things meet in one point rounding may part them; a hair more or less distance parts them for good.
        foreach (var hair in (double[])[0, 3e-7, -3e-7, 1.1e-6, -1.1e-6, 4.7e-6, -4.7e-6])
        {
            if (!Outlines.TryClose(Kept(outlines, edges, by + hair), out var closed)) continue;
            grown = [.. closed.Where(g => Math.Abs(g.Area) > Slack * g.Length)];
            return true;
        }
        return false;
    }

    private static List<Stretch> Kept(IReadOnlyList<Path2> outlines, List<Stretch> edges, double by)
    {
        var raw = Raw(outlines, by).Where(s => s.Length > Outlines.Least).ToList();
        var cuts = raw.Select(_ => new List<double>()).ToList();
        for (var i = 0; i < raw.Count; i++)
            for (var j = i + 1; j < raw.Count; j++)
            {
                if (!raw[i].Box.Overlaps(raw[j].Box)) continue;
                foreach (var p in raw[i].Meets(raw[j]))
                {
                    if (raw[i].PartOf(p, 1e-6) is { } a) cuts[i].Add(a);
                    if (raw[j].PartOf(p, 1e-6) is { } b) cuts[j].Add(b);
                }
            }
        var wanted = Math.Abs(by) - Slack;
        var kept = raw.SelectMany((s, i) => Outlines.Cut(s, cuts[i])).Where(s => IsClear(s.At(0.5))).ToList();
        return Once(kept);

        bool IsClear(Point2 p)
        {
            foreach (var edge in edges)
            {
                var near = edge.Box.Grown(wanted);
                if (p.X < near.MinX || p.X > near.MaxX || p.Y < near.MinY || p.Y > near.MaxY) continue;
                if (edge.DistanceTo(p) < wanted) return false;
            }
            return true;
        }
    }

    /// <summary>Each edge moved out, and an arc round each corner that opens; what of it is too near another edge is still there.</summary>
    private static IEnumerable<Stretch> Raw(IReadOnlyList<Path2> outlines, double by)
    {
        foreach (var path in outlines)
        {
            var edges = Outlines.Edges([path]).ToList();
            for (var i = 0; i < edges.Count; i++)
            {
                var (edge, next) = (edges[i], edges[(i + 1) % edges.Count]);
                var (from, to) = (edge.From + by * edge.Leaving.Right, edge.To + by * edge.Arriving.Right);
                // An arc that turns the other way round its centre lies nearer to its own ends: nothing of it is kept.
                if (edge.IsStraight || edge.Radius + Math.Sign(edge.Bulge) * by > Outlines.Least) yield return new(from, to, edge.Bulge);
                var start = next.From + by * next.Leaving.Right;
                var turn = Angle.Atan2(edge.Arriving.Cross(next.Leaving), edge.Arriving.Dot(next.Leaving));
                if (Math.Abs(Math.Abs(turn) - Math.PI) < 1e-9) turn = Math.Sign(by) * Math.PI; // straight back upon itself
                if (turn * by > 0 && to.DistanceTo(start) > Outlines.Least) yield return new(to, start, Angle.Tan(turn / 4));
            }
        }
    }

    /// <summary>Without what lies twice: one of two that run the same way, neither of two that run against one another.</summary>
    private static List<Stretch> Once(List<Stretch> stretches)
    {
        var gone = new bool[stretches.Count];
        for (var i = 0; i < stretches.Count; i++)
            for (var j = i + 1; j < stretches.Count && !gone[i]; j++)
            {
                if (gone[j] || stretches[i].At(0.5).DistanceTo(stretches[j].At(0.5)) > Slack) continue;
                if (Near(stretches[i].From, stretches[j].From) && Near(stretches[i].To, stretches[j].To)) gone[j] = true;
                else if (Near(stretches[i].From, stretches[j].To) && Near(stretches[i].To, stretches[j].From)) gone[i] = gone[j] = true;
            }
        return [.. stretches.Where((_, i) => !gone[i])];

        static bool Near(Point2 a, Point2 b) => a.DistanceTo(b) <= Slack;
    }
}
