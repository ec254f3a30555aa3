namespace Rodwright.Stairs.Proposals.Families;

/// <summary>Two turns to one hand, tapered steps below and a landing above.</summary>
internal static class WindersThenLanding
{
    public static Family Family { get; } = new("winders-then-landing", "quarter turn of tapered steps, then a landing", [FamilyTurn.Winders, FamilyTurn.Landing]);
}
