namespace Rodwright.Stairs.Proposals.Families;

/// <summary>Two flights beside one another with a half landing.</summary>
internal static class DogLeg
{
    public static Family Family { get; } = new("half-landing", "dog-leg with a half landing", [FamilyTurn.HalfLanding]);
}
