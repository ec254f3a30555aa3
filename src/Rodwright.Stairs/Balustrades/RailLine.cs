using Rodwright.Geometry;

namespace Rodwright.Stairs.Balustrades;

/// <summary>The top line of a straight rail over nosings that need not lie in one line.</summary>
/// <param name="Slope">Rise for each millimetre along.</param>
/// <param name="Level">Height at station 0.</param>
/// <param name="Excess">How much higher than wanted it stands over the nosing it is highest above, mm.</param>
internal sealed record RailLine(double Slope, double Level, double Excess)
{
    /// <summary>
    /// The lowest line that stands a height plumb above every nosing: at the flight's own pitch where it then stands nowhere more than <paramref name="follow"/> higher than wanted; otherwise at the slope at
    /// which its greatest excess is least, which is that of a line through two of the nosings.
    /// </summary>
    /// <param name="nosings">Station and height of each.</param>
    /// <param name="height">Wanted above each, mm.</param>
    /// <param name="pitch">Rise of the flight for each millimetre along.</param>
    /// <param name="follow">Tolerated excess, mm.</param>
    public static RailLine Over(IReadOnlyList<Point2> nosings, double height, double pitch, double follow)
    {
        var best = At(pitch);
        if (best.Excess <= follow) return best;
        for (var i = 0; i < nosings.Count; i++)
        {
            for (var j = i + 1; j < nosings.Count; j++)
            {
                if (Math.Abs(nosings[j].X - nosings[i].X) < 1) continue;
                var line = At((nosings[j].Y - nosings[i].Y) / (nosings[j].X - nosings[i].X));
                if (line.Excess < best.Excess - Tolerance.Same) best = line;
            }
        }
        return best;

        RailLine At(double slope)
        {
            var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
            foreach (var p in nosings)
            {
                var v = p.Y - slope * p.X;
                (low, high) = (Math.Min(low, v), Math.Max(high, v));
            }
            return new(slope, high + height, high - low);
        }
    }
}
