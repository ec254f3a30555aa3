namespace Rodwright.Stairs.Turns;

/// <summary>
/// Balancing scale (M3): widths on a straight line that ends with the narrow end fixed at the turn, adding up to S.
/// </summary>
public sealed class BalancingScale : InnerDivision
{
    /// <inheritdoc/>
    public override double[] Share(TurnSide side)
    {
        var (m, fixedEnd) = (side.Whole, side.Narrow);
        // The step with the fixed width: the one across the axis, or the last before it.
        var last = side.Part > 0 ? m + 1 : m;
        var rest = side.InnerAxis - (side.Part > 0 ? side.Part : 1) * fixedEnd;
        var free = last - 1;
        var step = free == 0 ? 0 : 2 * (rest - free * fixedEnd) / (free * (free + 1.0));
        var places = new double[m + 1];
        for (var k = 1; k <= m; k++) places[k] = places[k - 1] + fixedEnd + (last - k) * step;
        return places;
    }
}
