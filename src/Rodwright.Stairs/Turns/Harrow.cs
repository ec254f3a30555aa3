namespace Rodwright.Stairs.Turns;

/// <summary>
/// Harrow (M4): rays from a right triangle of base L and upright S cut the swung upright: x(l) = S l (L² + S²) / ((L² - S²) l + 2 S² L).
/// </summary>
public sealed class Harrow : InnerDivision
{
    /// <inheritdoc/>
    public override double[] Share(TurnSide side)
    {
        var (l, s) = (side.Axis, side.InnerAxis);
        return [.. side.Stations.Select(x => s * x * (l * l + s * s) / ((l * l - s * s) * x + 2 * s * s * l))];
    }
}
