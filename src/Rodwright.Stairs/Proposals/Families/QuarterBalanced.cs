namespace Rodwright.Stairs.Proposals.Families;

/// <summary>A quarter turn whose taper is shared with two straight steps before and after it.</summary>
internal static class QuarterBalanced
{
    public static Family Family { get; } = new("quarter-balanced", "quarter turn, balanced with two steps either side", [FamilyTurn.Winders with { Method = "balanced-progression", Shared = 2, Steps = [3, 4, 5] }]);
}
