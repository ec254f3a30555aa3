namespace Rodwright.Stairs.Turns;

/// <summary>One way of sharing the narrow line out among balanced steps, from the square steps to the axis of the turn (trade-practice.md 2a).</summary>
public abstract class InnerDivision
{
    /// <summary>One side of the turn.</summary>
    /// <param name="Stations">Of the riser faces on the walking line, from 0 at the last square one.</param>
    /// <param name="Axis">L: station of the axis.</param>
    /// <param name="InnerAxis">S: length of the narrow line as far as the axis.</param>
    /// <param name="Whole">Steps wholly on this side.</param>
    /// <param name="Part">Part of the step across the axis that lies on this side: a half, or 0 where a riser stands on the axis.</param>
    /// <param name="Narrow">The narrow end wished for at the axis.</param>
    public sealed record TurnSide(IReadOnlyList<double> Stations, double Axis, double InnerAxis, int Whole, double Part, double Narrow);

    /// <summary>Where each riser of a side stands on the narrow line, from 0 at the last square one.</summary>
    public abstract double[] Share(TurnSide side);
}
