using Rodwright.Geometry;

namespace Rodwright.Stairs.Turns;

/// <summary>
/// Angle method (M5): the goings on a line at an angle, projected from a pole on to the narrow line: x(l) = l cos a / (1 + l (cos a / S - 1 / L)), a = 20 degrees.
/// </summary>
public sealed class AngleProjection : InnerDivision
{
    private static readonly double Cosine = Angle.Cos(Math.PI / 9);

    /// <inheritdoc/>
    public override double[] Share(TurnSide side) =>
        [.. side.Stations.Select(l => l * Cosine / (1 + l * (Cosine / side.InnerAxis - 1 / side.Axis)))];
}
