namespace Rodwright.Geometry.Solids;

/// <summary>Pairs half-edges with those that run the other way.</summary>
internal static class HalfEdgeTwins
{
    /// <summary>The twin of each half-edge, and whether some edge belongs to more than two patches (two bodies of wood that touch along a line).</summary>
    /// <exception cref="InvalidOperationException">A half-edge has none: the surface is open.</exception>
    public static int[] Of(FacePatches patches, out bool touches)
    {
        var halves = patches.Halves;
        var last = new Dictionary<long, int>(halves.Count);
        var same = new int[halves.Count]; // the one before that runs the same way between the same corners
        touches = false;
        for (var h = 0; h < halves.Count; h++)
        {
            var key = Key(halves[h].From, halves[h].To);
            same[h] = last.TryGetValue(key, out var before) ? before : -1;
            touches |= same[h] >= 0;
            last[key] = h;
        }
        var twins = new int[halves.Count];
        for (var h = 0; h < halves.Count; h++)
        {
            if (!last.TryGetValue(Key(halves[h].To, halves[h].From), out var twin)) throw new InvalidOperationException("the faces of a solid do not close");
            twins[h] = twin;
        }
        if (!touches) return twins;
        foreach (var (key, h) in last)
            if (same[h] >= 0 && halves[h].From < halves[h].To) PairRound(patches, All(same, h), All(same, last[Key(halves[h].To, halves[h].From)]), twins);
        return twins;
    }

    private static long Key(int from, int to) => (long)from << 32 | (uint)to;

    private static List<int> All(int[] same, int h)
    {
        var all = new List<int>();
        for (; h >= 0; h = same[h]) all.Add(h);
        return all;
    }

    /// <summary>Round the edge, wood lies clockwise of each patch that runs with it, up to the next that runs against it.</summary>
    private static void PairRound(FacePatches patches, List<int> with, List<int> against, int[] twins)
    {
        var (from, to, patch) = patches.Halves[with[0]];
        var d = patches.Points[to] - patches.Points[from];
        d = 1 / d.Length * d;
        var e1 = patches.Planes[patch].Normal.Cross(d);
        var e2 = d.Cross(e1);
        foreach (var h in with)
        {
            var here = Turn(h, d);
            var nearest = against.MinBy(a => Math.IEEERemainder(here - Turn(a, -d), 2 * Math.PI) is var gap && gap <= 1e-9 ? gap + 2 * Math.PI : gap);
            (twins[h], twins[nearest]) = (nearest, h);
        }

        double Turn(int h, Vector3 along)
        {
            var into = patches.Planes[patches.Halves[h].Patch].Normal.Cross(along);
            return Angle.Atan2(into.Dot(e2), into.Dot(e1));
        }
    }
}
