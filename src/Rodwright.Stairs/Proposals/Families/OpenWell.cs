namespace Rodwright.Stairs.Proposals.Families;

/// <summary>Two flights with a well between them and a half landing.</summary>
internal static class OpenWell
{
    public static Family Family { get; } = new("half-landing-open-well", "half landing round an open well", [FamilyTurn.HalfLanding with { Wells = [150, 200, 300, 400] }]);
}
