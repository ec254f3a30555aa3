using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Surveys;

/// <summary>How much room is left between the stair and one wall, at floor level.</summary>
/// <param name="Wall">Index of the wall in the survey.</param>
/// <param name="Name">Its name.</param>
/// <param name="Least">Least distance of a corner of the stair from the wall's face, mm; negative where the stair would stand in the wall.</param>
/// <param name="At">That corner, in the world.</param>
public sealed record WallFit(int Wall, string Name, double Least, Point2 At)
{
    /// <summary>Every wall that the stair stands beside; none when no walls were measured.</summary>
    public static ImmutableArray<WallFit> Of(StairPlan plan)
    {
        if (RoomShape.TryOf(plan.Job.Survey) is not { } room) return [];
        var frame = RoomFrame.Of(plan, room);
        var corners = Corners(plan).Select(p => (World: p, Room: frame.ToRoom(p))).ToList();
        var fits = ImmutableArray.CreateBuilder<WallFit>();
        for (var i = 0; i < room.Walls.Length; i++)
        {
            var (wall, length) = (room.Walls[i], room.Lengths[i]);
            (Point2 World, double Off)? least = null;
            foreach (var (world, at) in corners)
            {
                if (wall.Station(at) < -1 || wall.Station(at) > length + 1 || wall.LeftOf(at) is not (> -400 and var off)) continue;
                if (least is not { } so || off < so.Off - Tolerance.Same) least = (world, off);
            }
            if (least is { } found) fits.Add(new(i, RoomShape.NameOf(plan.Job.Survey.Walls[i], i), found.Off, found.World));
        }
        return fits.ToImmutable();
    }

    /// <summary>Corners of what the stair takes up: backs of its strings, the first nosing and the trimmer.</summary>
    private static IEnumerable<Point2> Corners(StairPlan plan)
    {
        foreach (var back in StairBack.OuterOf(plan).Concat(StairBack.Of(plan)).Distinct())
        {
            yield return back.From;
            yield return back.To;
        }
        var (first, last) = (plan.RiserLines[0], plan.RiserLines[^1]);
        yield return first.Inner - plan.Job.Practice.Nosing * first.Up;
        yield return first.Outer - plan.Job.Practice.Nosing * first.Up;
        yield return last.Inner;
        yield return last.Outer;
    }
}
