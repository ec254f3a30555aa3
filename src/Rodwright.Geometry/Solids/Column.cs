namespace Rodwright.Geometry.Solids;

/// <summary>What stands over one cell of the base plane: stretches between two surfaces, from the lowest up. The surfaces do not pass one another over the cell.</summary>
internal static class Column
{
    /// <summary>One stretch of wood.</summary>
    public readonly record struct Stretch(Level Low, Level High);

    /// <summary>What is in both; what is no thicker than <paramref name="least"/> at t is nothing.</summary>
    public static List<Stretch> Both(List<Stretch> a, List<Stretch> b, double t, double least = 0)
    {
        var result = new List<Stretch>();
        foreach (var p in a)
            foreach (var q in b)
                Add(result, p.Low.HeightAt(t) >= q.Low.HeightAt(t) ? p.Low : q.Low, p.High.HeightAt(t) <= q.High.HeightAt(t) ? p.High : q.High, t, least);
        return result;
    }

    /// <summary>What of the first is not in the second; what is no thicker than <paramref name="least"/> at t is nothing.</summary>
    public static List<Stretch> Less(List<Stretch> a, List<Stretch> b, double t, double least = 0)
    {
        var left = a;
        foreach (var q in b)
        {
            var (low, high) = (q.Low.HeightAt(t), q.High.HeightAt(t));
            var rest = new List<Stretch>(left.Count + 1);
            foreach (var p in left)
            {
                if (high <= p.Low.HeightAt(t) || low >= p.High.HeightAt(t))
                {
                    rest.Add(p);
                    continue;
                }
                Add(rest, p.Low, q.Low, t, least);
                Add(rest, q.High, p.High, t, least);
            }
            left = rest;
        }
        return left;
    }

    private static void Add(List<Stretch> list, Level low, Level high, double t, double least)
    {
        if (high.HeightAt(t) - low.HeightAt(t) > least) list.Add(new(low, high));
    }
}
