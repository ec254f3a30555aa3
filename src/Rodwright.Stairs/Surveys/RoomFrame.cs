using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Surveys;

/// <summary>
/// Where the room's frame lies in the world of the stair. Room: x along the first wall from its beginning, y square out from it into the room. The stair stands
/// parallel to the wall it is placed against, climbing along it; a right-hand stair mirrors the room with it, so that one survey serves both hands.
/// </summary>
public sealed record RoomFrame
{
    private readonly Point2 origin;
    private readonly Vector2 along;
    private readonly Vector2 off;

    private RoomFrame(Point2 origin, Vector2 along, Vector2 off, double? from)
    {
        this.origin = origin;
        this.along = along;
        this.off = off;
        From = from;
    }

    /// <summary>From the beginning of the wall the stair stands against to the first riser's face, mm; null when there is no such wall.</summary>
    public double? From { get; }

    /// <summary>The frame for a plan and its job's survey.</summary>
    public static RoomFrame Of(StairPlan plan) => Of(plan, RoomShape.TryOf(plan.Job.Survey));

    internal static RoomFrame Of(StairPlan plan, RoomShape? room)
    {
        var place = plan.Job.Survey.Place;
        // The wall stands behind the outer string, or behind the inner one where only that is walled.
        var inner = plan.Job is { OuterSide: SideKind.Open, InnerSide: SideKind.Wall };
        var side = (inner ? -1 : 1) * (plan.IsMirrored ? -1 : 1);
        var back = inner ? plan.InnerThickness / 2 : plan.InnerThickness / 2 + plan.ClearWidth + plan.OuterThickness;
        var wall = room is not null && place.Wall <= room.Walls.Length ? room.Walls[place.Wall - 1] : new(Point2.Origin, new(1, 0));
        // Along the wall is up the page, out from it is away from the string's back.
        var (alongWall, offWall) = (new Vector2(0, 1), new Vector2(-side, 0));
        var along = wall.Along.X * alongWall - wall.Along.Y * offWall;
        var off = wall.Along.Y * alongWall + wall.Along.X * offWall;
        var at0 = At(0);
        var from = place.From ?? Default(plan, room, at0);
        return At(from);

        RoomFrame At(double from)
        {
            var begins = new Point2(side * (back + place.Gap), -from);
            return new(begins - (wall.Through.X * along + wall.Through.Y * off), along, off, room is null ? null : from);
        }
    }

    /// <summary>A turning stair stands in the corner at the end of its wall, a straight one where its well says; else at the beginning.</summary>
    private static double Default(StairPlan plan, RoomShape? room, RoomFrame at0)
    {
        var place = plan.Job.Survey.Place;
        var backs = StairBack.OuterOf(plan).ToList();
        var turns = backs.Exists(b => Math.Abs(b.Outward.Dot(backs[0].Outward)) < 0.5);
        if (turns && room is not null && place.Wall < room.Walls.Length)
        {
            var next = room.Walls[place.Wall];
            var nearing = room.Walls[place.Wall - 1].Along.Dot(next.Along.Left);
            if (nearing < -0.1) return Math.Round(backs.SelectMany(b => new[] { b.From, b.To }).Min(p => next.LeftOf(at0.ToRoom(p))) / -nearing, 6);
        }
        if (!turns && plan.Job.Survey.Well is { IsRectangle: true, Along: { } along } well && place.Wall == 1 && room is not null)
            return Math.Round(along + well.Length.Mean - at0.ToRoom(Arrival(plan)).X, 6);
        return 0;
    }

    /// <summary>Where the stair meets the trimmer: the last riser's back, with packing, on the walking line.</summary>
    internal static Point2 Arrival(StairPlan plan) =>
        plan.RiserLines[^1].Walking + (plan.Job.Practice.Riser + plan.Job.Practice.Packing) * plan.RiserLines[^1].Up;

    /// <summary>A place in the room, in the world.</summary>
    public Point2 ToWorld(Point2 p) => origin + p.X * along + p.Y * off;

    /// <summary>A direction in the room, in the world.</summary>
    public Vector2 ToWorld(Vector2 v) => v.X * along + v.Y * off;

    /// <summary>A place in the world, in the room.</summary>
    public Point2 ToRoom(Point2 p) => new((p - origin).Dot(along), (p - origin).Dot(off));

    /// <summary>A direction in the world, in the room.</summary>
    public Vector2 ToRoom(Vector2 v) => new(v.Dot(along), v.Dot(off));
}
