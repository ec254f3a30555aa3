namespace Rodwright.Stairs.Proposals.Families;

/// <summary>Two quarter turns to one hand with a flight between.</summary>
internal static class TwoQuarters
{
    public static Family Family { get; } = new("two-quarter-winders", "two quarter turns of tapered steps", [FamilyTurn.Winders, FamilyTurn.Winders]);
}
