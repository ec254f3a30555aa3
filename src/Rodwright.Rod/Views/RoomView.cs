using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Surveys;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Rod.Views;

/// <summary>The room as it was measured round the stair: walls, doors, windows, well and slopes, all in the world's x and y.</summary>
public sealed class RoomView
{
    /// <summary>The view of a stair's survey.</summary>
    public RoomView(Stair stair)
    {
        Stair = stair;
        Report = stair.InRoom();
        Frame = RoomFrame.Of(stair.Plan);
        Shape = RoomShape.TryOf(stair.Job.Survey);
        Walls = [.. Shape is null ? [] : Enumerable.Range(0, Shape.Walls.Length).Select(Wall)];
        Well = stair.Job.Survey.Well is { } well ? Path2.Polygon(WellShape.Of(well, stair.Plan, Frame).Select(Frame.ToWorld)) : null;
        var box = Box2.Empty;
        foreach (var part in stair.Kit.Strings) box = box.With(Footprint.Of(part.Part).Bounds);
        foreach (var riser in stair.Plan.RiserLines) box = box.With(stair.Plan.FaceOf(riser).Bounds);
        foreach (var newel in stair.Plan.Newels) box = box.With(newel.Centre);
        foreach (var wall in Walls) box = box.With(wall.From).With(wall.To).With(wall.At(wall.Length / 2) - wall.LeafOut * wall.Inward);
        if (Well is not null) box = box.With(Well.Bounds);
        foreach (var lining in Linings) box = box.With(Footprint.Of(lining).Bounds);
        // The floors at both ends are walked too: the headroom may be least on one, off the stair.
        if (Report.Headroom?.Least is { } least) box = box.With(least.At);
        Bounds = box;
    }

    /// <summary>The stair.</summary>
    public Stair Stair { get; }

    /// <summary>What was found of it in its room.</summary>
    public SurveyReport Report { get; }

    /// <summary>Where the room lies in the world.</summary>
    public RoomFrame Frame { get; }

    /// <summary>The walls in the room's own frame; null when none were measured.</summary>
    public RoomShape? Shape { get; }

    /// <summary>The walls' faces in the world, from beginning to end.</summary>
    public ImmutableArray<RoomWall> Walls { get; }

    /// <summary>The edge of the well; null when it was not measured.</summary>
    public Path2? Well { get; }

    /// <summary>Nosings and apron linings of open edges.</summary>
    public IEnumerable<Joinery.Parts.Part> Linings => Stair.Kit.Parts.Where(p => p.Kind is Joinery.Parts.PartKind.Apron or Joinery.Parts.PartKind.LandingNosing);

    /// <summary>Everything drawn.</summary>
    public Box2 Bounds { get; }

    /// <summary>The line on which a sloping ceiling is so high above its storey's finished floor, across a box; null where it does not cross it, or the ceiling is level.</summary>
    public (Point2 A, Point2 B)? Contour(Overhead above, double height, Box2 within)
    {
        if (!above.Slopes) return null;
        var floor = above.OverUpperFloor ? Stair.Job.Survey.Height : 0;
        var rise = above.Gradient.Length;
        var line = new Line2(above.At + (floor + height - above.Height) / (rise * rise) * above.Gradient, above.Gradient.Left);
        var (low, high) = (double.NegativeInfinity, double.PositiveInfinity);
        foreach (var (at, step, least, most) in new[] { (line.Through.X, line.Along.X, within.MinX, within.MaxX), (line.Through.Y, line.Along.Y, within.MinY, within.MaxY) })
        {
            if (Math.Abs(step) < 1e-12)
            {
                if (at < least || at > most) return null;
                continue;
            }
            var (a, b) = ((least - at) / step, (most - at) / step);
            (low, high) = (Math.Max(low, Math.Min(a, b)), Math.Min(high, Math.Max(a, b)));
        }
        return high - low > 1 ? (line.At(low), line.At(high)) : null;
    }

    private RoomWall Wall(int index)
    {
        var (line, length, run) = (Shape!.Walls[index], Shape.Lengths[index], Stair.Job.Survey.Walls[index]);
        return new(index, RoomShape.NameOf(run, index), Frame.ToWorld(line.Through), Frame.ToWorld(line.At(length)), Frame.ToWorld(line.Along.Left), run);
    }
}

/// <summary>One wall's face in the world.</summary>
/// <param name="Index">Its index in the survey.</param>
/// <param name="Name">Its name.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Inward">Unit direction into the room.</param>
/// <param name="Run">What was measured of it.</param>
public sealed record RoomWall(int Index, string Name, Point2 From, Point2 To, Vector2 Inward, WallRun Run)
{
    /// <summary>A point of the face, so far from its beginning.</summary>
    public Point2 At(double station) => From + station * (To - From).Unit;

    /// <summary>Length, mm.</summary>
    public double Length => From.DistanceTo(To);

    /// <summary>How far a leaf swings out behind the wall, mm; 0 when none does.</summary>
    public double LeafOut => Run.Openings.Where(o => o is { Kind: OpeningKind.Door, Swing: Swing.Out }).Select(o => o.Width).DefaultIfEmpty(0).Max();
}
