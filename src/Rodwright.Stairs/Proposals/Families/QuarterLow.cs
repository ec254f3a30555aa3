namespace Rodwright.Stairs.Proposals.Families;

/// <summary>Tapered steps round a quarter turn in the lower third.</summary>
internal static class QuarterLow
{
    public static Family Family { get; } = new("quarter-winders-low", "quarter turn of tapered steps, low", [FamilyTurn.Winders]) { Height = TurnHeight.Low };
}
