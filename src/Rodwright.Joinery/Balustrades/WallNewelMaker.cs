using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>Makes the half newel against the wall in which the upper landing's balustrade ends: it stands on the floor.</summary>
internal static class WallNewelMaker
{
    public static Part Make(StairPlan plan, RailRun rail)
    {
        var (side, height) = (plan.Job.Practice.Newel, rail.TopAt(rail.To) + plan.Job.Practice.NewelAboveRail - rail.Floor);
        var (looks, at) = (-rail.Centre.Along, rail.Centre.At(rail.To));
        return new()
        {
            Id = BalustradePlan.WallNewel, Name = "half newel of the upper landing", Mark = "HN1", Kind = PartKind.WallNewel, Material = plan.Job.Practice.Timber,
            Blank = new(height, side, side / 2, new(side / 2, 0), new(0, 1), []),
            Faces = [Face("front", looks, at, side, side / 2), Side("right", looks.Left), Side("left", looks.Right)],
        };

        PartFace Side(string name, Vector2 way) => Face(name, way, at + side / 4 * rail.Centre.Along + side / 2 * way, side / 2, side);

        PartFace Face(string name, Vector2 way, Point2 middle, double wide, double thick) =>
            new(name, new(new(middle.X, middle.Y, rail.Floor), Vector3.Level(way.Left), Vector3.Up), Path2.Rectangle(-wide / 2, 0, wide / 2, height), thick);
    }

    /// <summary>The middle of the whole newel it is half of.</summary>
    public static Point2 Centre(RailRun rail, double side) => rail.Centre.At(rail.To + side / 2);
}
