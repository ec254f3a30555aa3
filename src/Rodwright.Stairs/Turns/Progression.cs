namespace Rodwright.Stairs.Turns;

/// <summary>
/// Arithmetic progression from the going (M2): step k counted from the square ones is k units narrower than its going. u = (L - S) / (m(m+1)/2 + p(m+1)) for m whole
/// steps and a part p of the next.
/// </summary>
public sealed class Progression : InnerDivision
{
    /// <inheritdoc/>
    public override double[] Share(TurnSide side)
    {
        double m = side.Whole;
        var unit = (side.Axis - side.InnerAxis) / (m * (m + 1) / 2 + side.Part * (m + 1));
        return [.. side.Stations.Select((l, k) => l - unit * k * (k + 1) / 2)];
    }
}
