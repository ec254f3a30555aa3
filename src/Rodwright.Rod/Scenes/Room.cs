using System.Collections.Immutable;
using Rodwright.Joinery;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Scenes;

/// <summary>The room a stair stands in, plain, from the numbers of its plan: floors with the upper one's edge at the trimmer, and walls behind the wall strings.</summary>
internal static class Room
{
    /// <summary>How far walls and floors are shown past the ends of the stair, mm.</summary>
    private const double Past = 650;

    /// <summary>How far the walls stand above the upper floor, mm: the rail's height at least, so that the stair is seen against them.</summary>
    private const double Above = 300;

    /// <summary>Floors, then walls.</summary>
    public static ImmutableArray<RoomPiece> Of(Stair stair)
    {
        var view = new PlanView(stair);
        var walls = RoomWalls.Faces(view, Past);
        var top = stair.Plan.Risers * stair.Plan.Rise + stair.Job.Practice.RailHeight + Above;
        return [.. RoomFloors.Of(view, walls, Past), .. RoomWalls.Of(walls, top)];
    }
}
