namespace Rodwright.Stairs.Jobs;

/// <summary>The two sides of the stair as somebody climbing it sees them.</summary>
/// <param name="Left">On the left hand going up.</param>
/// <param name="Right">On the right hand going up.</param>
public sealed record Sides(SideKind Left, SideKind Right)
{
    /// <summary>The default: the inside of the turn (for a straight flight, its hand) is open, the other side walled.</summary>
    public static Sides For(Hand hand) => hand == Hand.Left ? new(SideKind.Open, SideKind.Wall) : new(SideKind.Wall, SideKind.Open);
}
