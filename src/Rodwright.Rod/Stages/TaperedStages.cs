using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>A tapered step on its board: riser faces, nosing, boundaries, housed ends, notch, glue lines.</summary>
internal static class TaperedStages
{
    public static IEnumerable<Stage> Of(Stair stair, Part part)
    {
        var view = new TreadView(stair, part);
        var (k, practice, plan) = (part.Step, stair.Job.Practice, stair.Plan);
        var frame = part.FaceSide.Frame;
        StageDraft Draft(string id, string what) => new($"{part.Id}-{id}", Bench.TaperedStep, part.Id, $"Tapered step {K(k)}: {what}");

        var draft = Draft("risers", "riser faces and nosing");
        var (a, b) = (OnFace(plan.Riser(k).Inner), OnFace(plan.Riser(k).Outer));
        draft.Faint("front", RiserFace(k), ThingId.Riser(k), [Path2.Polyline(a, b)], How(
            "draw the riser's face under this tread, parallel to the board's front edge", $"the nosing stands {plan.Units.Print(practice.Nosing)} in front of it", Published.Nosing,
            new Measure("the nosing's edge", practice.Nosing, "up the board", "nosing")));
        var (c, d) = (OnFace(plan.Riser(k + 1).Inner), OnFace(plan.Riser(k + 1).Outer));
        draft.Faint("back", RiserFace(k + 1), ThingId.Riser(k + 1), [Path2.Polyline(c, d)], How(
            $"draw the face of the riser behind: join the two points ({Words(c)} and {Words(d)})",
            plan.TaperedSteps.FirstOrDefault(s => s.Number == k) is { } step ? $"carried over from the plan; it tapers by {Number.Print(step.Taper.Degrees, 2)}°, with {plan.Units.Print(step.GoingChord)} between the faces on the walking line" : "carried over from the plan", "",
            [.. Point(c, "one end"), .. Point(d, "the other")]));
        var round = part.Cuts.First(x => x.Kind == CutKind.RoundedEdge);
        draft.LinedIn("nosing", "nosing", ThingId.Of(part, round), [round.Shape], How(
            $"line in the nosing's edge along the front of the board; it is rounded to {plan.Units.Print(round.Depth)}", "the grain runs along the nosing, and both datums of this step are its edge and the left end of the board", "",
            new Measure("the left end of the board", part.Blank.Length, "along, the length of the board", "length")));
        var stages = new List<Stage>(draft.Done());

        draft = Draft("boundaries", "faces of strings and newels");
        var n = 0;
        foreach (var edge in plan.Inner.Edges.Concat(plan.Outer.Edges).Where(e => e.Length > Tolerance.Same))
        {
            var line = Path2.Polyline(OnFace(edge.From), OnFace(edge.To));
            if (Clipped(line, part.Blank.Outline.Bounds) is not { } seen) continue;
            var (p, q) = (seen.Vertices[0].At, seen.Vertices[1].At);
            var carrier = edge.Carrier.Length == 0 ? "wall" : stair.Kit.Find(edge.Carrier).Mark;
            // A newel's faces are named as on its own sheet; the setting-out frame is that of the left hand.
            var looks = (plan.IsMirrored ? edge.Looks switch { "E" => "W", "W" => "E", _ => edge.Looks } : edge.Looks) is { Length: > 0 } l ? $" {l}" : "";
            draft.Faint($"face-{K(++n)}", $"face of {carrier}{looks}", edge.Carrier.Length > 0 ? edge.Carrier : ThingId.WallOuter, [seen], How(
                "join the two points", "carried over from the plan: what the step ends against", "", [.. Point(p, "one end"), .. Point(q, "the other")]),
                new("faces", "faces", "for each line of the table mark two points, along from the left end of the board and up from the nosing's edge, and join them", "what the step ends against, carried over from the plan: faces of strings by their marks, and of the newel by its mark and the way the face looks"));
        }
        stages.AddRange(draft.Done());
        stages.AddRange(Outline(stair, part, view, Draft("outline", "housed ends and notch")));

        draft = Draft("glue", "glue lines");
        var glue = GlueUp.Of(part, practice);
        foreach (var y in glue.Joints)
        {
            var v = part.Blank.Corner.Y + y;
            draft.LinedIn($"joint-{K(glue.Joints.IndexOf(y) + 1)}", $"glue line {K(glue.Joints.IndexOf(y) + 1)}", part.Id,
                [Path2.Polyline(new Point2(part.Blank.Corner.X, v), new Point2(part.Blank.Corner.X + part.Blank.Length, v))], How(
                "draw the glue line along the board, and mark the grain", $"strips no wider than {plan.Units.Print(practice.GlueStrip)}: {plan.Units.Print(part.Blank.Width)} / {K(glue.Strips)} = {plan.Units.Print(glue.Width)}, grain along the nosing", "",
                new Measure("the board's lower edge", y, "up", "up")));
        }
        return [.. stages, .. draft.Done()];

        Point2 OnFace(Point2 p) => frame.ToLocal(new(p.X, p.Y, 0)).Face;
        string Words(Point2 p) => $"{plan.Units.Print(view.Measured(p).X)} along, {plan.Units.Print(view.Measured(p).Y)} up";
        Measure[] Point(Point2 p, string end) => At(view, p, end);
    }

    private static Measure[] At(TreadView view, Point2 p, string end)
    {
        var m = view.Measured(p);
        return
        [
            new("the left end of the board", Math.Abs(m.X), m.X < -0.05 ? "out to the left" : "along", $"{end}, along", m.X < -0.05),
            new("the nosing's edge", Math.Abs(m.Y), m.Y < -0.05 ? "down" : "up", $"{end}, up", m.Y < -0.05),
        ];
    }

    /// <summary>The outline, corner by corner: each edge runs from its corner to the next.</summary>
    private static IEnumerable<Stage> Outline(Stair stair, Part part, TreadView view, StageDraft draft)
    {
        var practice = stair.Job.Practice;
        var corners = view.Corners;
        var onNewel = stair.Kit.Joints.Any(j => j.Male == part.Id && stair.Kit.Find(j.Female).Kind == PartKind.Newel);
        var depth = $"{stair.Units.Print(practice.Housing)} into strings" + (onNewel ? $", {stair.Units.Print(practice.NewelHousing)} into the newel" : "");
        var notched = Enumerable.Range(0, corners.Length).Any(IsInward);
        var once = new Telling("outline", "corners",
            "mark every corner of the table, along from the left end of the board and up from the nosing's edge; line in the outline from corner to corner" + (notched ? "; those with “in” turn inwards, at a housing or round a newel or corner" : ""),
            $"the ends are carried square into their housings: {depth}; where a string's face gives way to a newel's, or two walls meet, the step is notched");
        for (var i = 0; i < corners.Length; i++)
        {
            var (p, q) = (corners[i], corners[(i + 1) % corners.Length]);
            var back = part.Blank.Corner.X;
            draft.LinedIn($"edge-{TreadView.Letter(i)}", $"{TreadView.Letter(i)}{(IsInward(i) ? ", inward" : "")}", part.Id,
                [Path2.Polyline(new Point2(p.X + back, p.Y), new Point2(q.X + back, q.Y))], How(
                $"join {TreadView.Letter(i)} to {TreadView.Letter((i + 1) % corners.Length)}", $"carried over from the plan, with the ends {depth}", Published.SlantedEnds,
                new Measure("the left end of the board", Math.Abs(p.X), "along", "along"), new Measure("the nosing's edge", Math.Abs(p.Y), p.Y < -0.05 ? "down" : "up", "up", p.Y < -0.05)), once);
        }
        return draft.Done();

        bool IsInward(int i)
        {
            var (before, at, after) = (corners[(i + corners.Length - 1) % corners.Length], corners[i], corners[(i + 1) % corners.Length]);
            return (at - before).Cross(after - at) < -1e-6;
        }
    }

    /// <summary>The part of a straight line in a box; null when it misses, or only touches.</summary>
    private static Path2? Clipped(Path2 line, Box2 box)
    {
        var (a, d) = (line.Vertices[0].At, line.Vertices[1].At - line.Vertices[0].At);
        var (from, to) = (0.0, 1.0);
        foreach (var (way, room) in new[] { (-d.X, a.X - box.MinX), (d.X, box.MaxX - a.X), (-d.Y, a.Y - box.MinY), (d.Y, box.MaxY - a.Y) })
        {
            if (Math.Abs(way) < 1e-9)
            {
                if (room < 0) return null;
            }
            else if (way < 0) from = Math.Max(from, room / way);
            else to = Math.Min(to, room / way);
        }
        return (to - from) * d.Length > 0.5 ? Path2.Polyline(a + from * d, a + to * d) : null;
    }
}
