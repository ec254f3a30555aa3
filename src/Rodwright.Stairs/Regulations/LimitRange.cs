using Rodwright.Geometry;

namespace Rodwright.Stairs.Regulations;

/// <summary>What is allowed on one stair, scale and references worked out; null where that side is free.</summary>
/// <param name="Least">Least allowed.</param>
/// <param name="Most">Most allowed.</param>
public readonly record struct LimitRange(double? Least, double? Most)
{
    /// <summary>Rounding of doubles never fails a stair set out exactly to a limit: a millionth of a unit.</summary>
    private const double Rounding = 1e-6;

    /// <summary>The least whole step of a unit allowed; the limit itself where none lies in the range.</summary>
    internal double WholeAtLeast(Units units) => units.Up(Least!.Value - Rounding) is var whole && Holds(whole) ? whole : Least.Value;

    /// <summary>The greatest whole step of a unit allowed; the limit itself where none lies in the range.</summary>
    internal double WholeAtMost(Units units) => units.Down(Most!.Value + Rounding) is var whole && Holds(whole) ? whole : Most.Value;

    /// <summary>How far inside the limits a value lies; negative outside.</summary>
    public double Spare(double value) => Math.Min(value - (Least ?? double.NegativeInfinity), (Most ?? double.PositiveInfinity) - value);

    /// <summary>Whether a value keeps the limits; exactly at a limit it does.</summary>
    public bool Holds(double value) => Spare(value) >= -Rounding;
}
