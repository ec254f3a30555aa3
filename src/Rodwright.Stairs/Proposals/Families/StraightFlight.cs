namespace Rodwright.Stairs.Proposals.Families;

/// <summary>One flight, no turn.</summary>
internal static class StraightFlight
{
    public static Family Family { get; } = new("straight", "straight flight", []);
}
