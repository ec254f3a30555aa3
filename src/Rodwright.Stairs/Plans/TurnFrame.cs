using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>
/// The frame a turn is set out in (setting-out.md 2.1): origin on its newel's centre, y the way the incoming flight climbs, x across it, away from the side the
/// stair turns to. A turn to the right is the left one's mirror.
/// </summary>
/// <param name="Centre">The newel's centre in plan.</param>
/// <param name="Along">Unit direction of the incoming flight.</param>
/// <param name="Hand">Which way it turns in the plan's own frame.</param>
public sealed record TurnFrame(Point2 Centre, Vector2 Along, Hand Hand)
{
    /// <summary>Unit direction of x in plan.</summary>
    public Vector2 Across => Hand == Hand.Left ? Along.Right : Along.Left;

    /// <summary>A point of the turn's frame in plan.</summary>
    public Point2 World(Point2 local) => Centre + local.X * Across + local.Y * Along;

    /// <summary>A point of the plan in the turn's frame.</summary>
    public Point2 Local(Point2 world) => new((world - Centre).Dot(Across), (world - Centre).Dot(Along));

    /// <summary>Mirrored in the y axis.</summary>
    public TurnFrame Mirrored() => new(Centre.Mirrored, new(-Along.X, Along.Y), Hand == Hand.Left ? Hand.Right : Hand.Left);
}
