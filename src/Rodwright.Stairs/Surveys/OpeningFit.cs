using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Surveys;

/// <summary>How a door or window fares beside the stair.</summary>
/// <param name="Wall">Index of its wall.</param>
/// <param name="Index">Its index in the wall.</param>
/// <param name="Opening">The opening.</param>
/// <param name="Clear">Depth of floor left clear before it, mm; null when nothing of the stair stands before it below its head.</param>
/// <param name="Step">The step that stands nearest; 0 for none.</param>
/// <param name="Crossed">Whether a string against the wall crosses it.</param>
public sealed record OpeningFit(int Wall, int Index, WallOpening Opening, double? Clear, int Step, bool Crossed)
{
    /// <summary>Whether as much floor is clear as it needs.</summary>
    public bool IsClear => Clear is not { } clear || clear >= Opening.Depth - 0.5;

    /// <summary>Every opening of the survey.</summary>
    public static ImmutableArray<OpeningFit> Of(StairPlan plan)
    {
        if (plan.Job.Survey.Walls.All(w => w.Openings.Count == 0) || RoomShape.TryOf(plan.Job.Survey) is not { } room) return [];
        var frame = RoomFrame.Of(plan, room);
        var surfaces = WalkedSurfaces.Of(plan, 0);
        var steps = surfaces.Where(s => s.Step >= 1 && s.Step < plan.Risers).ToList();
        return
        [
            .. plan.Job.Survey.Walls.SelectMany((wall, i) => wall.Openings.Select((opening, j) =>
            {
                var (clear, step) = Before(plan, frame, room.Walls[i], opening, steps);
                return new OpeningFit(i, j, opening, clear, step, Crosses(plan, frame, room.Walls[i], opening, surfaces));
            })),
        ];
    }

    /// <summary>The least depth left before an opening by steps that do not pass over its head.</summary>
    private static (double? Clear, int Step) Before(StairPlan plan, RoomFrame frame, Line2 wall, WallOpening opening, List<WalkedSurface> steps)
    {
        if (opening.Depth <= 0) return (null, 0);
        Point2[] zone =
        [
            wall.At(opening.At), wall.At(opening.At + opening.Width), wall.At(opening.At + opening.Width) + opening.Depth * wall.Along.Left, wall.At(opening.At) + opening.Depth * wall.Along.Left,
        ];
        (double? Clear, int Step) least = (null, 0);
        foreach (var step in steps)
        {
            // A step whose riser stands above the head can be walked under.
            if ((step.Step - 1) * plan.Rise >= opening.Head) continue;
            var taken = ConvexClip.Inside([.. step.Ring.Select(frame.ToRoom)], zone);
            if (taken.Count < 3 || ConvexClip.Area(taken) < 25) continue;
            var clear = Math.Max(0, taken.Min(wall.LeftOf));
            if (least.Clear is not { } so || clear < so) least = (clear, step.Step);
        }
        return least;
    }

    /// <summary>Whether a string against the wall runs across the opening: its band between the heights of the steps beside it.</summary>
    private static bool Crosses(StairPlan plan, RoomFrame frame, Line2 wall, WallOpening opening, ImmutableArray<WalkedSurface> surfaces)
    {
        foreach (var back in StairBack.Of(plan).Where(b => b.String.Length > 0))
        {
            var outward = frame.ToRoom(back.Outward);
            var (from, to) = (frame.ToRoom(back.From), frame.ToRoom(back.To));
            if (outward.Dot(wall.Along.Left) > -0.9 || Math.Abs(wall.LeftOf(from.Towards(to, 0.5))) > 150) continue;
            var (low, high) = (Math.Max(opening.At, Math.Min(wall.Station(from), wall.Station(to))), Math.Min(opening.At + opening.Width, Math.Max(wall.Station(from), wall.Station(to))));
            if (high - low < 5) continue;
            var board = plan.Strings.FirstOrDefault(s => s.Id == back.String);
            var (thick, wide) = (board?.Thickness ?? 0, board?.Width ?? 0);
            var heights = new[] { low + 1, high - 1 }.Select(s => HeightBeside(surfaces, frame.ToWorld(wall.At(s)) - (thick + Math.Abs(wall.LeftOf(from)) + 5) * back.Outward)).OfType<double>().ToList();
            if (heights.Count == 0) continue;
            var slant = 1 / plan.Pitch.Cosine;
            var (bottom, top) = (heights.Min() - (wide - plan.Job.Practice.Margin) * slant, heights.Max() + plan.Job.Practice.Margin * slant);
            if (bottom < opening.Head && top > opening.Sill) return true;
        }
        return false;
    }

    private static double? HeightBeside(ImmutableArray<WalkedSurface> surfaces, Point2 p) =>
        surfaces.FirstOrDefault(s => Path2.Polygon(s.Ring).Holds(p)) is { } surface ? surface.HeightAt(p) : null;
}
