namespace Rodwright.Stairs.Proposals.Families;

/// <summary>Three flights with quarter landings round an open well.</summary>
internal static class ThreeFlights
{
    public static Family Family { get; } = new("three-flights", "three flights round an open well, with two landings", [FamilyTurn.Landing, FamilyTurn.Landing]);
}
