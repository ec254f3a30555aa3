namespace Rodwright.Stairs.Proposals.Families;

/// <summary>Turns to its hand and back again.</summary>
internal static class LeftThenRight
{
    public static Family Family { get; } = new("left-then-right", "a quarter turn of tapered steps, then one to the other hand", [FamilyTurn.Winders, FamilyTurn.Winders with { Against = true }]);
}
