namespace Rodwright.Stairs.Proposals.Families;

/// <summary>Tapered steps round a quarter turn in the upper third.</summary>
internal static class QuarterHigh
{
    public static Family Family { get; } = new("quarter-winders-high", "quarter turn of tapered steps, high", [FamilyTurn.Winders]) { Height = TurnHeight.High };
}
