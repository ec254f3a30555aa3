namespace Rodwright.Cutting;

/// <summary>What sawing takes away, in the problem's unit of length.</summary>
/// <param name="Kerf">Wood lost between two pieces, and between two strips.</param>
/// <param name="EndTrim">Cut off each end of every board before it is used, the saw's cut included.</param>
/// <param name="EdgeTrim">Taken off each edge of a board that is ripped into strips, the saw's cut included.</param>
public sealed record Saw(long Kerf, long EndTrim, long EdgeTrim)
{
    /// <summary>A saw that takes nothing: packing pure numbers.</summary>
    public static Saw None { get; } = new(0, 0, 0);
}
