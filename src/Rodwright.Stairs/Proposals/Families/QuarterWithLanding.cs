namespace Rodwright.Stairs.Proposals.Families;

/// <summary>Two flights square to one another with a landing between.</summary>
internal static class QuarterWithLanding
{
    public static Family Family { get; } = new("quarter-landing", "quarter turn with a landing", [FamilyTurn.Landing]);
}
