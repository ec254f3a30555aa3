using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Surveys;

/// <summary>The outline of the well in the room's frame.</summary>
public static class WellShape
{
    /// <summary>
    /// Corners of the well, anticlockwise in the room's frame. A rectangle without a place ends, along the first wall, where the stair ends: at the furthest back of its strings or
    /// at the trimmer it arrives at, whichever lies further.
    /// </summary>
    public static ImmutableArray<Point2> Of(Well well, StairPlan plan, RoomFrame frame)
    {
        if (!well.IsRectangle) return Path2.Polygon(well.Corners).Area >= 0 ? [.. well.Corners] : [.. well.Corners.Reverse()];
        var (length, width) = (well.Length.Mean, well.Width.Mean);
        var along = well.Along ?? FarEnd(plan, frame) - length;
        return [new(along, well.Out), new(along + length, well.Out), new(along + length, well.Out + width), new(along, well.Out + width)];
    }

    private static double FarEnd(StairPlan plan, RoomFrame frame) =>
        StairBack.OuterOf(plan).SelectMany(b => new[] { b.From, b.To }).Append(RoomFrame.Arrival(plan)).Max(p => frame.ToRoom(p).X);
}
