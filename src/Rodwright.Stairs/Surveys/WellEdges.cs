using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Surveys;

/// <summary>Reads from the survey which stretches of the well's edge show.</summary>
public static class WellEdges
{
    // An edge so near a wall's face is that wall's, mm: surveys of both are not closer.
    private const double OnWall = 60;

    // A landing's balustrade so near an edge stands along it, mm.
    private const double OnRail = 250;

    // What is left between two things along an edge and shorter than this is neither's, mm.
    private const double Least = 40;

    /// <summary>Whether the survey tells: a well, and the walls of the room. Without walls nothing says which edges are open.</summary>
    public static bool AreKnown(StairPlan plan) => plan.Job.Survey.Well is not null && RoomShape.TryOf(plan.Job.Survey) is not null;

    /// <summary>The stretches, in order round the well; none where the survey does not tell.</summary>
    public static ImmutableArray<WellEdge> Of(StairPlan plan)
    {
        if (plan.Job.Survey.Well is not { } well || RoomShape.TryOf(plan.Job.Survey) is not { } room) return [];
        var frame = RoomFrame.Of(plan, room);
        var ring = Ring.Anticlockwise([.. WellShape.Of(well, plan, frame).Select(frame.ToWorld)]);
        var walls = Walls(plan, room, frame);
        var edges = ring.Select((p, i) => (Line: Line2.Between(p, ring[(i + 1) % ring.Count]), Length: p.DistanceTo(ring[(i + 1) % ring.Count]))).ToList();
        var arrives = Arrives(plan, [.. edges.Select(e => e.Line)]);
        var found = edges.Select((e, i) => Stretches(plan, e.Line, e.Length, walls, i == arrives)).ToList();
        var open = ImmutableArray.CreateBuilder<WellEdge>();
        for (var i = 0; i < edges.Count; i++)
        {
            var (before, after) = ((i + edges.Count - 1) % edges.Count, (i + 1) % edges.Count);
            foreach (var (from, to) in found[i])
            {
                var (begins, ends) = (from < Tolerance.Joint, to > edges[i].Length - Tolerance.Joint);
                open.Add(new(i, edges[i].Line, from, to)
                {
                    Before = begins && found[before].Exists(s => s.To > edges[before].Length - Tolerance.Joint) ? edges[before].Line : null,
                    After = ends && found[after].Exists(s => s.From < Tolerance.Joint) ? edges[after].Line : null,
                    WallBefore = begins ? WallOn(walls, edges[before].Line, edges[before].Length, atEnd: true) : null,
                    WallAfter = ends ? WallOn(walls, edges[after].Line, edges[after].Length, atEnd: false) : null,
                });
            }
        }
        return open.ToImmutable();
    }

    /// <summary>How far before the well's edge the stair arrives, level; negative where it passes it. 0 where it meets it as near as both were measured, or nothing tells.</summary>
    public static double Short(StairPlan plan)
    {
        if (plan.Job.Survey.Well is not { } well) return 0;
        var frame = RoomFrame.Of(plan);
        var ring = Ring.Anticlockwise([.. WellShape.Of(well, plan, frame).Select(frame.ToWorld)]);
        List<Line2> edges = [.. ring.Select((p, i) => Line2.Between(p, ring[(i + 1) % ring.Count]))];
        if (Arrives(plan, edges) is not (>= 0 and var i)) return 0;
        var off = edges[i].LeftOf(RoomFrame.Arrival(plan)) / edges[i].Along.Right.Dot(plan.RiserLines[^1].Up);
        return Math.Abs(off) > OnWall ? off : 0;
    }

    /// <summary>The faces of the measured walls, and the backs of the stair that stand against one, in the world.</summary>
    private static List<(Line2 Face, double Length)> Walls(StairPlan plan, RoomShape room, RoomFrame frame) =>
    [
        .. room.Walls.Zip(room.Lengths, (w, length) => (Line2.Between(frame.ToWorld(w.Through), frame.ToWorld(w.At(length))), length)),
        .. StairBack.Of(plan).Select(b => (Line2.Between(b.From, b.To), b.From.DistanceTo(b.To))),
    ];

    /// <summary>Which edge the stair arrives at: the one across its way on that lies nearest to its last riser.</summary>
    private static int Arrives(StairPlan plan, IReadOnlyList<Line2> edges)
    {
        var (at, up) = (RoomFrame.Arrival(plan), plan.RiserLines[^1].Up);
        return Enumerable.Range(0, edges.Count).Where(i => edges[i].Along.Right.Dot(up) > 0.7).OrderBy(i => Math.Abs(edges[i].LeftOf(at) / edges[i].Along.Right.Dot(up))).Append(-1).First();
    }

    private static List<(double From, double To)> Stretches(StairPlan plan, Line2 edge, double length, List<(Line2 Face, double Length)> walls, bool arrives)
    {
        var taken = walls.Select(w => Along(edge, length, w.Face, w.Length)).OfType<(double From, double To)>().ToList();
        if (arrives) taken.Add(Arrival(plan, edge));
        foreach (var rail in BalustradePlan.Of(plan)?.Rails.Where(r => r.Kind == RailKind.Landing && Tolerance.IsSame(r.Floor, plan.Risers * plan.Rise)) ?? [])
        {
            var half = plan.Job.Practice.Newel / 2;
            var (a, b) = (rail.Centre.At(rail.From - half), rail.Centre.At(rail.To + half));
            if (Math.Abs(rail.Centre.Along.Cross(edge.Along)) < 0.1 && Math.Abs(edge.LeftOf(a.Towards(b, 0.5))) < OnRail) taken.Add((Math.Min(edge.Station(a), edge.Station(b)), Math.Max(edge.Station(a), edge.Station(b))));
        }
        return Free(0, length, taken, Least);
    }

    /// <summary>From string to string or newel to newel, at the last riser.</summary>
    private static (double From, double To) Arrival(StairPlan plan, Line2 edge)
    {
        var last = plan.RiserLines[^1];
        var across = (last.Outer - last.Inner).Unit;
        List<Point2> ends = [last.Inner - plan.InnerThickness * across, last.Outer + plan.OuterThickness * across];
        foreach (var newel in plan.Newels.Where(n => Math.Min(n.Centre.DistanceTo(last.Inner), n.Centre.DistanceTo(last.Outer)) < 1.5 * plan.Job.Practice.Newel))
            ends.AddRange([newel.Centre - plan.Job.Practice.Newel / 2 * across, newel.Centre + plan.Job.Practice.Newel / 2 * across]);
        var stations = ends.Select(edge.Station).ToList();
        return (stations.Min(), stations.Max());
    }

    /// <summary>How much of an edge a wall stands on; null for none.</summary>
    private static (double From, double To)? Along(Line2 edge, double length, Line2 wall, double wallLength)
    {
        if (Math.Abs(wall.Along.Cross(edge.Along)) > 0.17) return null;
        var (a, b) = (edge.Station(wall.Through), edge.Station(wall.At(wallLength)));
        var (from, to) = (Math.Max(0, Math.Min(a, b)), Math.Min(length, Math.Max(a, b)));
        if (to - from < 1 || Math.Abs(edge.LeftOf(wall.At(wall.Station(edge.At((from + to) / 2))))) > OnWall) return null;
        // What is left of the edge at a corner the walls of which were measured a little short is no opening.
        return (from < OnWall ? 0 : from, to > length - OnWall ? length : to);
    }

    private static Line2? WallOn(List<(Line2 Face, double Length)> walls, Line2 edge, double length, bool atEnd)
    {
        foreach (var (face, wallLength) in walls)
            if (Along(edge, length, face, wallLength) is { } on && (atEnd ? on.To > length - Tolerance.Joint : on.From < Tolerance.Joint)) return face;
        return null;
    }

    /// <summary>What is left of a stretch, in order, pieces shorter than the least left out.</summary>
    public static List<(double From, double To)> Free(double from, double to, IEnumerable<(double From, double To)> taken, double least)
    {
        var (free, at) = (new List<(double, double)>(), from);
        foreach (var (begins, ends) in taken.Append((to, to)).OrderBy(t => t.Item1))
        {
            if (Math.Min(begins, to) - at >= least) free.Add((at, Math.Min(begins, to)));
            at = Math.Max(at, ends);
        }
        return free;
    }
}
