namespace Rodwright.Drawings.Sheets.Dimensions;

/// <summary>Moves crowded places apart along a line, as little as can be.</summary>
internal static class Spread
{
    /// <summary>
    /// The places nearest (by least squares) to the wished ones that keep their order and lie at least <paramref name="pitch"/> apart.
    /// </summary>
    /// <param name="wished">Places in ascending order.</param>
    /// <param name="pitch">The least distance between neighbours.</param>
    public static double[] Apart(IReadOnlyList<double> wished, double pitch)
    {
        // With i * pitch taken off, "apart" becomes "never falling": pool whatever falls and give the pool its mean.
        var pools = new List<(double Sum, int Count)>();
        for (var i = 0; i < wished.Count; i++)
        {
            pools.Add((wished[i] - i * pitch, 1));
            while (pools.Count > 1 && Mean(pools[^2]) > Mean(pools[^1]))
            {
                pools[^2] = (pools[^2].Sum + pools[^1].Sum, pools[^2].Count + pools[^1].Count);
                pools.RemoveAt(pools.Count - 1);
            }
        }
        var places = new double[wished.Count];
        var k = 0;
        foreach (var pool in pools)
        {
            for (var j = 0; j < pool.Count; j++, k++) places[k] = Mean(pool) + k * pitch;
        }
        return places;

        static double Mean((double Sum, int Count) pool) => pool.Sum / pool.Count;
    }
}
