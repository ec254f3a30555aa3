using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Joinery.Surveys;

/// <summary>The gap between a wall string's back, which is made true, and the wall it stands against, which is not, once the string is pushed home against it.</summary>
/// <param name="String">Mark of the string.</param>
/// <param name="Wall">Index of the wall in the survey.</param>
/// <param name="Name">Name of the wall.</param>
/// <param name="Widest">Widest gap, mm.</param>
/// <param name="S">Where, along the string's face, mm.</param>
/// <param name="Z">Where, above the lower floor, mm.</param>
/// <param name="OffSquareDegrees">Angle between string and wall in plan, degrees; positive where the wall falls away going up.</param>
/// <param name="LeanPerMetre">How far the wall leans into the room per metre of height, mm.</param>
public sealed record Scribing(string String, int Wall, string Name, double Widest, double S, double Z, double OffSquareDegrees, double LeanPerMetre)
{
    /// <summary>The gaps of a stair's wall strings; a string with no measured wall behind it has none.</summary>
    public static ImmutableArray<Scribing> Of(StairPlan plan, IEnumerable<StringBoard> boards)
    {
        if (RoomShape.TryOf(plan.Job.Survey) is not { } room) return [];
        var frame = RoomFrame.Of(plan);
        return [.. boards.Where(b => b.Site.IsWall).Select(b => Of(plan, room, frame, b)).OfType<Scribing>()];
    }

    /// <summary>
    /// Back and wall are planes: the gap is linear along the string and up it, and so widest and least at corners of the board's outline.
    /// </summary>
    private static Scribing? Of(StairPlan plan, RoomShape room, RoomFrame frame, StringBoard board)
    {
        var site = board.Site;
        var outline = board.Outline.Flattened();
        var (low, high) = (outline.Min(p => p.X), outline.Max(p => p.X));
        var middle = site.Face.At((low + high) / 2);
        var toStair = plan.RiserLines.Select(r => r.Walking).MinBy(p => p.DistanceTo(middle));
        var outward = site.Face.LeftOf(toStair) > 0 ? site.Face.Along.Right : site.Face.Along.Left;
        var back = new Line2(site.Face.Through + site.Thickness * outward, site.Face.Along);
        if (Behind(room, frame, back.At((low + high) / 2), outward) is not { } index) return null;
        var wall = room.Walls[index];
        var lean = plan.Job.Survey.Walls[index].Plumb?.Slope ?? 0;
        var gaps = outline.Select(p => (Gap: wall.LeftOf(frame.ToRoom(back.At(p.X))) - lean * p.Y, At: p)).ToList();
        var (least, most) = (gaps.MinBy(g => g.Gap), gaps.MaxBy(g => g.Gap));
        var along = frame.ToRoom(site.Face.Along);
        var sense = along.Dot(wall.Along) >= 0 ? 1 : -1;
        var off = Angle.Atan2(sense * along.Cross(wall.Along), sense * along.Dot(wall.Along));
        return new(site.Mark, index, RoomShape.NameOf(plan.Job.Survey.Walls[index], index), most.Gap - least.Gap, most.At.X, most.At.Y, -sense * Angle.FromRadians(off).Degrees, 1000 * lean);
    }

    private static int? Behind(RoomShape room, RoomFrame frame, Point2 back, Vector2 outward)
    {
        var (at, away) = (frame.ToRoom(back), frame.ToRoom(outward));
        int? best = null;
        for (var i = 0; i < room.Walls.Length; i++)
        {
            var wall = room.Walls[i];
            if (away.Dot(wall.Along.Left) > -0.85 || wall.Station(at) < 0 || wall.Station(at) > room.Lengths[i] || Math.Abs(wall.LeftOf(at)) > 300) continue;
            if (best is not { } so || Math.Abs(wall.LeftOf(at)) < Math.Abs(room.Walls[so].LeftOf(at))) best = i;
        }
        return best;
    }
}
