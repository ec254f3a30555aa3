namespace Rodwright.Stairs.Jobs;

/// <summary>Finished section of a rail, mm.</summary>
/// <param name="Width">Across the rail, level.</param>
/// <param name="Height">Square to its length.</param>
public sealed record Section(double Width, double Height);
