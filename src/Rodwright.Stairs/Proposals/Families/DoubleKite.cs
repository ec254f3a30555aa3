namespace Rodwright.Stairs.Proposals.Families;

/// <summary>A half turn round one newel: with six steps, two of them kites.</summary>
internal static class DoubleKite
{
    public static Family Family { get; } = new("half-winders", "half turn of tapered steps round one newel", [FamilyTurn.HalfWinders]);
}
