namespace Rodwright.Stairs.Regulations;

/// <summary>A box of rises and goings that go together; a document may allow several, and a stair keeps it in any one of them. Full size, mm, ends included.</summary>
/// <param name="RiseLeast">Least rise.</param>
/// <param name="RiseMost">Greatest rise.</param>
/// <param name="GoingLeast">Least going with it.</param>
/// <param name="GoingMost">Greatest going with it.</param>
public readonly record struct RiseAndGoing(double RiseLeast, double RiseMost, double GoingLeast, double GoingMost)
{
    /// <summary>How far a rise lies outside the box; 0 within.</summary>
    internal double RiseOff(double rise, double scale) => Math.Max(0, Math.Max(RiseLeast * scale - rise, rise - RiseMost * scale));
}
