using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Steps;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Joinery.Wells;

/// <summary>
/// Makes nosing and apron lining round the surveyed well, along every stretch of its edge that shows (<see cref="WellEdges"/>): the lining packed out from the trimmer, the nosing on it as far in front of it as a tread's is
/// of its riser. Linings are butted in inside corners and mitred where the floor stands out into the well; nosings are mitred at both. Left-hand frame.
/// </summary>
internal static class WellEdgeMaker
{
    // Shorter pieces are left out, mm; a lining no deeper than that hides nothing.
    private const double Least = 40, LeastDeep = 20;

    /// <summary>Adds the pieces to the parts and gives their joints.</summary>
    public static List<Joint> Add(StairPlan plan, List<Part> parts, List<Finding> findings)
    {
        var joints = new List<Joint>();
        var (edge, practice, floor) = (plan.Job.LandingEdge!, plan.Job.Practice, plan.Risers * plan.Rise);
        var (deep, under) = (edge.DepthOf(plan.Job, ofUpperFloor: true), floor - practice.Tread);
        if (plan.Job.Survey.Well is not null && !WellEdges.AreKnown(plan))
        {
            findings.Add(new("RW4108", Severity.Note, "landing edges", "no walls were measured, so nothing says which edges of the well are open: no nosing and no apron lining is made round it",
                "measure the walls of the room (survey.walls); an edge that no wall stands on is lined"));
        }
        if (deep < LeastDeep) return joints;
        if (WellEdges.AreKnown(plan) && WellEdges.Short(plan) is not 0 and var gap)
        {
            findings.Add(new("RW4109", Severity.Note, "landing edges",
                $"the stair arrives {plan.Units.Print(Math.Abs(gap), 0)} {(gap > 0 ? "short of" : "past")} the edge of the well as it was measured; nosing and apron lining follow that edge, and nothing is made for what joins it to the stair",
                gap > 0 ? "measure the well as it will be trimmed, its edge where the stair arrives (survey.well.corners for a landing let into it)" : "measure the well again, or move the stair (survey.place.from)"));
        }
        double back = edge.Packing, face = edge.Packing + edge.Apron, front = face + practice.Nosing, heel = front - practice.NosingPiece;
        var runs = Meeting([.. WellEdges.Of(plan).SelectMany(e => Runs(e, parts, (front, heel), [((heel, front), (under, floor)), ((0, face), (under - deep, under))]))]);
        var number = parts.Count(p => p.Kind == PartKind.Apron);
        var ids = runs.Select((_, i) => Number.Print(number + i + 1, 0)).ToList();
        for (var i = 0; i < runs.Count; i++)
        {
            var (run, id) = (runs[i], ids[i]);
            parts.Add(Apron(plan, run, id, run.Apron(face, back), (face, back), (under - deep, under)));
            parts.Add(Nosing(plan, run, id, run.Nosing(), (front, heel), floor));
            joints.Add(new($"landing-nosing-{id}/apron-{id}", JointKind.NosingOnApron, "landing-nosing-" + id, "apron-" + id, 0));
            foreach (var newel in run.Newels)
                foreach (var piece in new[] { "apron-", "landing-nosing-" }) joints.Add(new($"{piece}{id}/{newel}", JointKind.RailToNewel, piece + id, newel, 0));
            var next = run.Ends ? runs.FindIndex(r => r.Begins && Same(r.Edge.Line, run.Edge.After!.Value)) : -1;
            if (next < 0) continue;
            foreach (var piece in new[] { "apron-", "landing-nosing-" }) joints.Add(new($"{piece}{ids[next]}/{piece}{id}", JointKind.EdgeCorner, piece + ids[next], piece + id, 0));
        }
        return joints;
    }

    private static bool Same(Line2 a, Line2 b) => a.Through.IsSame(b.Through) && Math.Abs(a.Along.Cross(b.Along)) < 1e-9;

    /// <summary>An edge's stretch less what of the stair stands in its way.</summary>
    private static IEnumerable<WellRun> Runs(WellEdge edge, IReadOnlyCollection<Part> parts, (double Front, double Back) across, IReadOnlyList<((double Near, double Far) Across, (double Low, double High) Heights)> zones)
    {
        var near = parts.Where(p => p.Kind is not (PartKind.NewelCap or PartKind.Wedges)).ToList();
        var taken = zones.SelectMany(z => EdgeObstacles.Of(edge.Line, near, z.Across, z.Heights)).ToList();
        var reach = WellRun.Reach(edge, across);
        foreach (var (from, to) in WellEdges.Free(reach.From, reach.To, taken.Select(t => (t.From, t.To)), Least))
        {
            var (first, last) = (Tolerance.IsSame(from, reach.From), Tolerance.IsSame(to, reach.To));
            yield return new(edge, first ? edge.From : from, last ? edge.To : to, across, [.. taken.Where(t => t.Part.Kind.IsPost() && ((!first && Tolerance.IsSame(t.To, from)) || (!last && Tolerance.IsSame(t.From, to))) && IsAcross(t.Part, edge)).Select(t => t.Part.Id).Distinct()])
            {
                Begins = first && edge.Before is not null, Ends = last && edge.After is not null, BeginsAtWall = first && edge.WallBefore is not null, EndsAtWall = last && edge.WallAfter is not null,
            };
        }
    }

    /// <summary>The runs as they meet: one to whose corner nothing comes ends there, clear of the others; and what then is too short is left out, which may leave another corner without its partner.</summary>
    private static List<WellRun> Meeting(List<WellRun> runs)
    {
        while (true)
        {
            List<WellRun> met = [.. runs.Select(r => r with { Begins = r.Begins && runs.Exists(o => o.Ends && Same(o.Edge.Line, r.Edge.Before!.Value)), Ends = r.Ends && runs.Exists(o => o.Begins && Same(o.Edge.Line, r.Edge.After!.Value)) })];
            List<WellRun> left = [.. met.Where(r => r.Nosing() is var e && Math.Min(e.FrontTo - e.FrontFrom, e.BackTo - e.BackFrom) >= Least)];
            if (left.Count < runs.Count)
            {
                runs = left;
                continue;
            }
            var cut = Enumerable.Range(0, left.Count).FirstOrDefault(i => left.Take(i).Any(o => !AreJoined(o, left[i]) && !ReferenceEquals(left[i].ClearOf(o), left[i])), -1);
            if (cut < 0) return left;
            left[cut] = left.Take(cut).Where(o => !AreJoined(o, left[cut])).Aggregate(left[cut], (r, o) => r.ClearOf(o));
            runs = left;
        }
    }

    private static bool AreJoined(WellRun a, WellRun b) => (a.Ends && b.Begins && Same(a.Edge.After!.Value, b.Edge.Line)) || (b.Ends && a.Begins && Same(b.Edge.After!.Value, a.Edge.Line));

    /// <summary>A post whose faces are square to the edge, so that an end butts against one.</summary>
    private static bool IsAcross(Part post, WellEdge edge) => post.Faces.Any(f => Math.Abs(f.Frame.W.X * edge.Line.Along.X + f.Frame.W.Y * edge.Line.Along.Y) > 1 - 1e-9);

    private static Part Apron(StairPlan plan, WellRun run, string number, (double FaceFrom, double FaceTo, double BackFrom, double BackTo) ends, (double Face, double Back) at, (double Low, double High) heights)
    {
        var thick = at.Face - at.Back;
        var (from, to) = (Math.Min(ends.FaceFrom, ends.BackFrom), Math.Max(ends.FaceTo, ends.BackTo));
        var frame = Seen(run, at.Face, 0);
        // Seen from the well stations run to the left.
        var outline = Path2.Rectangle(-to, heights.Low, -from, heights.High);
        List<PartFace> faces = [new("face side", frame, outline, thick)];
        if (!Tolerance.IsSame(ends.FaceFrom, ends.BackFrom) || !Tolerance.IsSame(ends.FaceTo, ends.BackTo))
        {
            var top = Seen(run, at.Face, heights.High);
            faces.Add(new("top edge", new(top.Origin, top.U, -top.W), Path2.Polygon(new Point2(-ends.FaceTo, 0), new(-ends.FaceFrom, 0), new(-ends.BackFrom, thick), new(-ends.BackTo, thick)), heights.High - heights.Low));
        }
        return new()
        {
            Id = "apron-" + number, Name = "apron lining of the well " + number, Mark = "AP" + number, Kind = PartKind.Apron, Material = plan.Job.LandingEdge!.Material,
            Blank = Blank.Around(outline.Bounds, thick), Faces = [.. faces],
        };
    }

    private static Part Nosing(StairPlan plan, WellRun run, string number, (double FrontFrom, double FrontTo, double BackFrom, double BackTo) ends, (double Front, double Back) at, double floor)
    {
        var practice = plan.Job.Practice;
        var seen = Seen(run, at.Front, floor);
        var wide = at.Front - at.Back;
        var top = Path2.Polygon(new Point2(-ends.FrontTo, 0), new(-ends.FrontFrom, 0), new(-ends.BackFrom, wide), new(-ends.BackTo, wide));
        return new()
        {
            Id = "landing-nosing-" + number, Name = "nosing of the well " + number, Mark = "LN" + number, Kind = PartKind.LandingNosing, Material = practice.Timber,
            Blank = Blank.Around(top.Bounds, practice.Tread),
            Faces = [new("face side (top)", new(seen.Origin, seen.U, -seen.W), top, practice.Tread)],
            Cuts = [new("nosing", CutKind.RoundedEdge, 0, Path2.Polyline(new Point2(-ends.FrontTo, 0), new(-ends.FrontFrom, 0)), TreadMaker.NosingRadius(practice))],
        };
    }

    /// <summary>The upright plane so far before the edge, seen from the well: u back along the edge from its first corner, v up.</summary>
    private static Frame3 Seen(WellRun run, double offset, double height)
    {
        var at = run.Edge.Line.OffsetLeft(offset).Through;
        return new(new(at.X, at.Y, height), Vector3.Level(-run.Edge.Line.Along), Vector3.Up);
    }
}
