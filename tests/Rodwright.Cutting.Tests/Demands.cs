using System.Collections.Immutable;

namespace Rodwright.Cutting.Tests;

/// <summary>Made-up lists of several shapes; the same for the same seed.</summary>
internal static class Demands
{
    private static readonly ImmutableArray<StockBoard> Boards =
        [new("3000", 3000, 0, 3000), new("3900", 3900, 0, 3900), new("4800", 4800, 0, 4800), new("5400", 5400, 0, 5400)];

    public static CuttingProblem FewLong(int seed) => Lengths(seed, 20, 900, 2900, 1, 2);

    public static CuttingProblem ManyShort(int seed) => Lengths(seed, 25, 60, 700, 2, 8);

    public static CuttingProblem NearEqual(int seed) => Lengths(seed, 30, 880, 940, 1, 3);

    /// <summary>Sixty pieces of a dozen lengths from boards in steps of 1200.</summary>
    public static CuttingProblem Mixed(int seed)
    {
        var random = new Random(seed);
        var lengths = Enumerable.Range(0, 12).Select(_ => (long)random.Next(200, 2300)).ToArray();
        var quantity = new int[12];
        for (var i = 0; i < 60; i++) quantity[random.Next(12)]++;
        return new([.. lengths.Select((l, i) => new CutPiece("p" + i, l, 0, quantity[i])).Where(p => p.Quantity > 0)], [new("2400", 2400, 0, 2400), new("3600", 3600, 0, 3600), new("4800", 4800, 0, 4800)], new(4, 0, 0));
    }

    /// <summary>Prices that have no step in common, and offcuts of earlier jobs.</summary>
    public static CuttingProblem Priced(int seed)
    {
        var problem = Lengths(seed, 15, 200, 2400, 1, 3);
        return new(problem.Pieces, [new("2400", 2400, 0, 1013), new("3000", 3000, 0, 1237), new("3900", 3900, 0, 1701), new("4800", 4800, 0, 2029), new("offcut a", 1234, 0, 0, 1), new("offcut b", 1900, 0, 0, 2)], problem.Saw);
    }

    /// <summary>A stair's boards: three widths, wide boards ripped.</summary>
    public static CuttingProblem Ripped(int seed)
    {
        var random = new Random(seed);
        long[] widths = [95, 145, 220];
        return new(
            [.. Enumerable.Range(0, 10).Select(i => new CutPiece("p" + i, random.Next(200, 2400), widths[random.Next(3)], random.Next(1, 4)))],
            [.. new long[] { 100, 150, 225 }.SelectMany(w => new long[] { 3000, 3900, 4800 }.Select(l => new StockBoard($"{w} x {l}", l, w, l / 300 * w / 25 * 5)))], new(4, 10, 0));
    }

    /// <summary>At most seven pieces, any stock, some of it limited.</summary>
    public static CuttingProblem Small(int seed)
    {
        var random = new Random(seed);
        var isWide = seed % 2 == 1;
        var saw = new Saw(random.Next(3) * 2, random.Next(2) * 5, random.Next(2) * 3);
        var pieces = Enumerable.Range(0, random.Next(1, 8)).Select(i => new CutPiece("p" + i, random.Next(2, 14) * 5, isWide ? random.Next(1, 4) * 20 : 0, 1)).ToList();
        var stock = Enumerable.Range(0, random.Next(1, 4)).Select(i => new StockBoard("s" + i, random.Next(12, 30) * 5, isWide ? random.Next(2, 6) * 20 : 0, random.Next(4, 30), random.Next(3) == 0 ? random.Next(1, 3) : null));
        return new([.. pieces], [.. stock], saw);
    }

    private static CuttingProblem Lengths(int seed, int kinds, int shortest, int longest, int least, int most)
    {
        var random = new Random(seed);
        return new([.. Enumerable.Range(0, kinds).Select(i => new CutPiece("p" + i, random.Next(shortest, longest + 1), 0, random.Next(least, most + 1)))], Boards, new(4, 10, 0));
    }
}
