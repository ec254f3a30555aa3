namespace Rodwright.Stairs.Jobs;

/// <summary>A finished section of stock.</summary>
/// <param name="Thickness">mm.</param>
/// <param name="Width">mm.</param>
public sealed record Board(double Thickness, double Width);
