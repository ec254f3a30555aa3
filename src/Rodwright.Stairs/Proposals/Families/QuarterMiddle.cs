namespace Rodwright.Stairs.Proposals.Families;

/// <summary>Tapered steps round a quarter turn in the middle third.</summary>
internal static class QuarterMiddle
{
    public static Family Family { get; } = new("quarter-winders-middle", "quarter turn of tapered steps, in the middle", [FamilyTurn.Winders]) { Height = TurnHeight.Middle };
}
