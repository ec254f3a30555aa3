namespace Rodwright.Stairs.Turns;

/// <summary>Equal parts of the narrow line (M1 of trade-practice.md 2a).</summary>
public sealed class EqualDivision : InnerDivision
{
    /// <inheritdoc/>
    public override double[] Share(TurnSide side) => [.. side.Stations.Select((_, k) => k * side.InnerAxis / (side.Whole + side.Part))];
}
