namespace Rodwright.Stairs.Balustrades;

/// <summary>A handrail over one nosing.</summary>
/// <param name="Riser">The nosing's riser; 0 for the floor of a landing beside the rail.</param>
/// <param name="At">Station along the rail's line, mm.</param>
/// <param name="Nosing">Height of the nosing above the lower floor, mm.</param>
/// <param name="Top">Height of the rail's top there, mm.</param>
public sealed record RailHeight(int Riser, double At, double Nosing, double Top)
{
    /// <summary>Rail's top plumb above the nosing, mm.</summary>
    public double Above => Top - Nosing;
}
