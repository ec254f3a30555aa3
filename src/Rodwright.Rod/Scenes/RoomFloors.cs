using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Scenes;

/// <summary>
/// Lower floor, landing and upper floor. An upper one is boards on a plain block, whose edge is the trimmer the strings hook over; boards leave room for nosing pieces,
/// newels and strings that pass them.
/// </summary>
internal static class RoomFloors
{
    /// <summary>Depth of the block below the boards where no string hooks over it, mm: of the picture only.</summary>
    private const double Joists = 150;

    /// <summary>How far the upper floor is shown beside the stair's open side, mm.</summary>
    private const double Beside = 200;

    /// <summary>How far the upper floor is shown beyond its trimmer, mm: little, because it lies between the eye and the stair.</summary>
    private const double Beyond = 450;

    /// <summary>The floors of a stair between walls.</summary>
    /// <param name="view">The stair in plan.</param>
    /// <param name="walls">The walls' faces, the wall to the left of each.</param>
    /// <param name="past">How far the lower floor is shown past the stair, mm.</param>
    public static IEnumerable<RoomPiece> Of(PlanView view, IReadOnlyList<Path2> walls, double past)
    {
        var plan = view.Stair.Plan;
        var bounds = walls.Aggregate(view.Bounds, (box, w) => box.With(w.Bounds)).With(view.Bounds.Grown(past));
        if (Clipped(Corners(bounds), walls, view) is { } ground) yield return new("floor", "floor", RoomSolid.Of(ground, 0, -view.Stair.Job.Practice.FloorBoards), Vector3.Up);
        for (var k = 1; k <= plan.Risers; k++)
        {
            if (plan.Steps[k - 1] is not (StepKind.Landing or StepKind.Floor)) continue;
            var (kind, name) = plan.Steps[k - 1] == StepKind.Floor ? ("upper floor", "upper floor") : ("landing", plan.Turns.Count(t => t.Steps.IsEmpty) < 2 ? "landing" : $"landing of {TurnWords.The(plan, plan.TurnOf(k)!)}");
            if ((kind == "landing" ? Landing(view, k) : Clipped(Over(view), walls, view)) is not { } outline) continue;
            foreach (var (shape, i) in Slabs(view, outline, k).Select((s, i) => (s, i))) yield return new(kind, i == 0 ? name : $"{name}, {Number.Print(i + 1, 0)}", shape, Vector3.Up);
        }
    }

    private static IEnumerable<Geometry.Solids.Solid> Slabs(PlanView view, Path2 outline, int step)
    {
        var (stair, practice) = (view.Stair, view.Stair.Job.Practice);
        var level = step * stair.Plan.Rise;
        var under = level - Math.Max(practice.FloorBoards, practice.Tread);
        var newels = view.Newels.Where(n => stair.Plan.Newels.First(s => s.Id == n.Part.Id).Role != NewelRole.Bottom).ToList();
        var hooks = stair.Kit.Strings.Where(b => b.Site.Upper.Kind == StringEndKind.Head && Math.Abs(b.Site.Upper.Level - level) < 1).ToList();
        var pieces = stair.Kit.Parts.Where(p => p.Kind == PartKind.NosingPiece && p.Step == step);
        List<Path2> passed = [.. pieces.Select(Footprint.Of), .. newels.Select(n => n.Outline), .. hooks.Select(h => view.Strings.First(s => s.Part.Id == h.Part.Id).Outline)];
        foreach (var boards in RoomSolid.Less(outline, passed, level, under)) yield return boards;
        // Top newels are notched over the trimmer; a turn's newel stands clear of it.
        List<Path2> posts = [.. newels.Where(n => n.Part.Cuts.All(c => c.Kind is not (CutKind.Notch or CutKind.Split))).Select(n => n.Outline)];
        var depth = hooks.Select(h => under - h.LowerEdge.Vertices[^1].At.Y).Append(Joists).Max();
        foreach (var block in RoomSolid.Less(outline, posts, under, under - depth)) yield return block;
    }

    /// <summary>The upper floor beyond its trimmer.</summary>
    private static List<Point2> Over(PlanView view)
    {
        var (plan, practice) = (view.Stair.Plan, view.Stair.Job.Practice);
        var riser = plan.Riser(plan.Risers);
        var across = (riser.Outer - riser.Inner).Unit;
        var trimmer = practice.Riser + practice.Packing;
        var (from, to) = (riser.Inner - (practice.Newel / 2 + Beside) * across, riser.Outer + (plan.OuterThickness + Beside) * across);
        return [from + trimmer * riser.Up, to + trimmer * riser.Up, to + (trimmer + Beyond) * riser.Up, from + (trimmer + Beyond) * riser.Up];
    }

    /// <summary>A landing, from behind the riser that arrives at it to the back of the one that leaves it, as far as the walls of its far side.</summary>
    private static Path2 Landing(PlanView view, int step)
    {
        var (plan, practice) = (view.Stair.Plan, view.Stair.Job.Practice);
        var turn = plan.TurnOf(step)!;
        var (frame, w) = (turn.Frame, turn.Site.Between);
        var far = turn.Site.OuterFace + (plan.IsInner(turn) ? plan.OuterThickness : plan.InnerThickness);
        var (front, back) = (-turn.FirstRiser + practice.Riser + practice.Packing, -turn.LastRiser - practice.Riser);
        Point2[] points = turn.Site.Quarters == 1
            ? [new(back, front), new(far, front), new(far, far), new(back, far)]
            : w > 0
                ? [new(0, front), new(far, front), new(far, far), new(-far - w, far), new(-far - w, back), new(-w, back), new(-w, Math.Max(front, back)), new(0, Math.Max(front, back))]
                : [new(0, front), new(far, front), new(far, far), new(-far, far), new(-far, back), new(0, back)];
        var path = Path2.Polygon([.. points.Where((p, i) => p.DistanceTo(points[(i + 1) % points.Length]) > Tolerance.Same).Select(frame.World)]);
        return path.Area < 0 ? path.Reversed() : path;
    }

    private static Path2? Clipped(List<Point2> ring, IReadOnlyList<Path2> walls, PlanView view)
    {
        if (ConvexClip.Area(ring) < 1) return null;
        foreach (var wall in walls)
        {
            for (var i = 0; i < wall.EdgeCount; i++)
            {
                // Behind a wall the stair goes round there is room again: only walls with the whole stair before them cut its floors.
                var face = Line2.Between(wall.Edge(i).To, wall.Edge(i).From);
                if (view.Stair.Plan.RiserLines.All(r => face.LeftOf(r.Inner) > -1 && face.LeftOf(r.Outer) > -1)) ring = ConvexClip.LeftOf(ring, face);
            }
        }
        if (ring.Count < 3 || ConvexClip.Area(ring) < 1) return null;
        var path = Path2.Polygon(ring);
        return path.Area < 0 ? path.Reversed() : path;
    }

    private static List<Point2> Corners(Box2 b) => [new(b.MinX, b.MinY), new(b.MaxX, b.MinY), new(b.MaxX, b.MaxY), new(b.MinX, b.MaxY)];
}
