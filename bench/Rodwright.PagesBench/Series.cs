namespace Rodwright.PagesBench;

/// <summary>What was measured of one thing.</summary>
public sealed class Series(IEnumerable<double> values)
{
    private readonly double[] sorted = [.. values.Order()];

    /// <summary>How often it was measured.</summary>
    public int Count => sorted.Length;

    /// <summary>Half were no more than this.</summary>
    public double Median => At(0.5);

    /// <summary>Of a hundred, 95 were no more than this.</summary>
    public double Most => At(0.95);

    /// <summary>The worst of all.</summary>
    public double Worst => Count == 0 ? double.NaN : sorted[^1];

    private double At(double share) => Count == 0 ? double.NaN : sorted[Math.Max(0, (int)Math.Ceiling(share * Count) - 1)];
}
