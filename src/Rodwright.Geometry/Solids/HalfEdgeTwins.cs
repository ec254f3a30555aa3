namespace Rodwright.Geometry.Solids;

/// <summary>Pairs half-edges with those that run the other way.</summary>
internal static class HalfEdgeTwins
{
    /// <summary>The twin of each half-edge, and whether some edge belongs to more than two patches (two bodies of wood that touch along a line).</summary>
    /// <exception cref="InvalidOperationException">A half-edge has none: the surface is open.</exception>
    public static int[] Of(FacePatches patches, out bool touches)
    {
        var halves = patches.Halves;
        var leaving = new Leaving(patches.Points.Count, halves.Count);
        for (var h = 0; h < halves.Count; h++) leaving.Add(halves[h].From, h);
        var twins = new int[halves.Count];
        touches = false;
        for (var h = 0; h < halves.Count; h++)
        {
            var (twin, found) = (-1, 0);
            for (var k = leaving.First(halves[h].To); k >= 0; k = leaving.After(k)) if (halves[k].To == halves[h].From) (twin, found) = (k, found + 1);
            if (found == 0) throw new InvalidOperationException("the faces of a solid do not close");
            twins[h] = twin;
            touches |= found > 1;
        }
        if (!touches) return twins;
        var done = new HashSet<(int, int)>();
        foreach (var (from, to, _) in halves)
        {
            if (from > to || !done.Add((from, to))) continue;
            var with = All(leaving, halves, from, to);
            if (with.Count > 1) PairRound(patches, with, All(leaving, halves, to, from), twins);
        }
        return twins;
    }

    private static List<int> All(Leaving leaving, List<(int From, int To, int Patch)> halves, int from, int to)
    {
        var all = new List<int>();
        for (var k = leaving.First(from); k >= 0; k = leaving.After(k)) if (halves[k].To == to) all.Add(k);
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
