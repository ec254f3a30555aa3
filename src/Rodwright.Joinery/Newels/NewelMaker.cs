using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Steps;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using System.Collections.Immutable;

namespace Rodwright.Joinery.Newels;

/// <summary>
/// Makes newels: four faces S, E, N, W, each with its cuts by height above the foot and distance from the face's left arris as one looks at it
/// (setting-out.md 5). Left-hand frame.
/// </summary>
internal static class NewelMaker
{
    private static readonly string[] Looks = ["S", "E", "N", "W"];

    // To the right along each face, as one looks at it.
    private static readonly Vector2[] Rights = [new(1, 0), new(0, 1), new(-1, 0), new(0, -1)];

    public static Part Make(StairPlan plan, SectionsOfPlan sections, NewelSite site, ImmutableArray<StringTenon> tenons, BalustradePlan? balustrade, List<Finding> findings)
    {
        var practice = plan.Job.Practice;
        var side = practice.Newel;
        var own = tenons.Where(t => t.Newel == site.Id).ToList();
        var (foot, head) = (NewelHeights.Foot(plan, site, sections, own), NewelHeights.Head(plan, site, balustrade));
        var faces = Looks.Select(looks => Face(site, looks, side, foot, head)).ToImmutableArray();
        var cuts = new List<Cut>();
        foreach (var piece in sections.Treads.Values.Concat(sections.NosingPieces.Values).OrderBy(p => p.Step)) cuts.AddRange(TreadCuts(plan, site, piece, foot));
        foreach (var riser in sections.Risers.Values.OrderBy(p => p.Step)) cuts.AddRange(RiserCuts(plan, site, riser, foot));
        foreach (var tenon in own) cuts.AddRange(TenonCuts(plan, site, tenon, faces, foot));
        if (site.Split is { } behind)
            cuts.Add(new("split", CutKind.Split, FaceLooking(faces, behind), Path2.Rectangle(0, 0, side, head - foot), side / 2, "", null, "split off; the back stands against the wall"));
        else if (Notch(plan, site, faces, foot, head) is { } notch) cuts.Add(notch);
        TrimmerAtTurn(plan, site, findings);
        BehindString(plan, site, findings);
        return new()
        {
            Id = site.Id, Name = site.Name, Mark = site.Mark, Kind = PartKind.Newel, Material = practice.Timber,
            Blank = new(head - foot, side, side, new(side, 0), new(0, 1), []),
            Faces = faces,
            Cuts = [.. cuts],
        };
    }

    private static PartFace Face(NewelSite site, string looks, double side, double foot, double head)
    {
        var h = side / 2;
        var c = site.Centre;
        var right = Rights[Array.IndexOf(Looks, looks)];
        var corner = looks switch
        {
            "S" => new Point2(c.X - h, c.Y - h),
            "E" => new Point2(c.X + h, c.Y - h),
            "N" => new Point2(c.X + h, c.Y + h),
            _ => new Point2(c.X - h, c.Y + h),
        };
        return new(looks, new(new(corner.X, corner.Y, foot), Vector3.Level(right), Vector3.Up), Path2.Rectangle(0, 0, side, head - foot), side);
    }

    private static IEnumerable<Cut> TreadCuts(StairPlan plan, NewelSite site, StepSections piece, double foot)
    {
        var kind = plan.Steps[piece.Step - 1] is StepKind.Landing or StepKind.Floor ? "nosing" : "tread";
        var practice = plan.Job.Practice;
        foreach (var section in piece.Inner.Concat(piece.Outer).Where(s => s.Edge.Carrier == site.Id && s.Edge.Kind == BoundaryKind.NewelFace))
        {
            var top = piece.Step * plan.Rise - foot;
            var at = Start(site, section.Edge, practice.Newel);
            var reach = new HousingShapes.Reach(double.NegativeInfinity, double.PositiveInfinity);
            var seat = HousingShapes.Tread(at + section.From, at + section.To, double.IsNaN(section.NosingAt) ? null : new(at + section.NosingAt, section.FrontSine), top, null, reach, practice).Seat;
            yield return Housing(plan, site, section, $"{kind}-{piece.Step}", seat, top - practice.Tread, top);
        }
    }

    private static IEnumerable<Cut> RiserCuts(StairPlan plan, NewelSite site, StepSections riser, double foot)
    {
        var (bottom, top) = RiserMaker.Heights(plan, riser.Step);
        foreach (var section in riser.Inner.Concat(riser.Outer).Where(s => s.Edge.Carrier == site.Id && s.Edge.Kind == BoundaryKind.NewelFace && !s.Butts))
        {
            var at = Start(site, section.Edge, plan.Job.Practice.Newel);
            yield return Housing(plan, site, section, $"riser-{riser.Step}",
                Path2.Rectangle(at + section.From, bottom - foot, at + section.To, top - foot), bottom - foot, top - foot);
        }
    }

    /// <summary>Where an edge begins on its face, from the arris it climbs from: at the middle where the half before it was split off.</summary>
    private static double Start(NewelSite site, BoundaryEdge edge, double side) => site.Split is null ? 0 : (edge.From - site.Centre).Dot(edge.Along) + side / 2;

    /// <summary>A housing whose edge comes within the cover of an arris runs out through it.</summary>
    private static Cut Housing(StairPlan plan, NewelSite site, Section section, string piece, Path2 seat, double bottom, double top)
    {
        var practice = plan.Job.Practice;
        var side = practice.Newel;
        var box = seat.Bounds;
        var (runsLeft, runsRight) = (box.MinX < practice.Cover - Tolerance.Same, box.MaxX > side - practice.Cover + Tolerance.Same);
        // Along a newel on the right of the climber, climbing runs from right to left as one looks at its face.
        var flips = Rights[Array.IndexOf(Looks, section.Edge.Looks)].Dot(section.Edge.Along) < 0;
        var shape = seat;
        if (runsLeft || runsRight)
        {
            var cut = Path2.Rectangle(runsLeft ? 0 : box.MinX, bottom, runsRight ? side : box.MaxX, top);
            // A rounded front stays rounded unless it is the edge that runs out, or the round itself reaches the back.
            var back = Box2.Of(seat.Vertices.Select(v => v.At).Where(p => p.X >= box.MaxX - Tolerance.Same));
            var roundPasses = seat.Vertices.Any(v => v.At.X > side && v.At.X < box.MaxX - Tolerance.Same);
            shape = runsLeft || !section.HasFront || roundPasses || back.Height < box.Height - Tolerance.Same ? cut : Extended(seat, side);
        }
        Path2 Flip(Path2 path) => flips ? path.MapMirrored(p => new(side - p.X, p.Y)) : path;
        var note = runsLeft && runsRight ? "runs through from arris to arris" : runsLeft || runsRight ? "runs out at the arris" : "";
        return new($"housing-{piece}-{section.Edge.Looks}", CutKind.Housing, Array.IndexOf(Looks, section.Edge.Looks), Flip(shape), practice.NewelHousing,
            $"{piece}/{site.Id}", ReferenceEquals(shape, seat) ? null : Flip(seat), note);
    }

    private static Path2 Extended(Path2 seat, double to)
    {
        var right = seat.Bounds.MaxX;
        return new(seat.Vertices.Select(v => v.At.X >= right - Tolerance.Same ? v with { At = new(to, v.At.Y) } : v), true);
    }

    private static IEnumerable<Cut> TenonCuts(StairPlan plan, NewelSite site, StringTenon tenon, ImmutableArray<PartFace> faces, double foot)
    {
        var practice = plan.Job.Practice;
        var along = tenon.Points * tenon.Site.Face.Along; // the way the tenon points
        var face = FaceLooking(faces, -along);
        var frame = faces[face].Frame;
        // The string's board stands behind its face; the tenon keeps its back.
        var back = tenon.Site.Inner ? tenon.Site.Face.Along.Left : tenon.Site.Face.Along.Right;
        var near = tenon.Site.Face.Through + (tenon.Site.Thickness - tenon.Thickness) * back;
        var far = tenon.Site.Face.Through + tenon.Site.Thickness * back;
        var (u1, u2) = (AcrossOf(frame, near), AcrossOf(frame, far));
        var (left, right) = (Math.Min(u1, u2), Math.Max(u1, u2));
        var joint = $"{tenon.Site.Id}/{site.Id}";
        var clearance = practice.Tenon.MorticeClearance;
        var names = new[] { "lower", "upper" };
        for (var i = 0; i < 2; i++)
        {
            var (bottom, top) = tenon.Tenons[i];
            yield return new($"mortice-{tenon.Site.Id}-{names[i]}", CutKind.Mortice, face, Path2.Rectangle(left, bottom - foot, right, top - foot),
                tenon.Length + clearance, joint);
        }
        yield return new($"haunch-{tenon.Site.Id}", CutKind.Haunch, face,
            Path2.Rectangle(left, tenon.Bottom + tenon.Third - foot, right, tenon.Top - tenon.Third - foot), tenon.Haunch + clearance, joint);

        // Pegs are driven from the face behind the string, through the tenon and a little beyond; where another string stands behind it, from the string's own side as far as its back.
        var isBeside = plan.TurnAt(site.Id) is { HasStringsSideBySide: true };
        var pegFace = FaceLooking(faces, isBeside ? -back : back);
        var pegFrame = faces[pegFace].Frame;
        var at = site.Centre - (practice.Newel / 2 - tenon.PegBack) * along;
        var u = AcrossOf(pegFrame, at);
        var outside = pegFrame.Origin.Plan;
        // Never so deep that it meets the housings on the far side.
        var through = Math.Abs((outside - (isBeside ? far : near)).Dot(back));
        var depth = isBeside ? through : Math.Min(through + 10, Math.Max(through, practice.Newel - practice.NewelHousing - practice.Tenon.Between));
        for (var i = 0; i < 2; i++)
        {
            yield return new($"peg-{tenon.Site.Id}-{names[i]}", CutKind.Bore, pegFace,
                Path2.Circle(new(u, tenon.PegHeights[i] - foot), practice.Tenon.Peg / 2), depth, joint);
        }
    }

    private static int FaceLooking(ImmutableArray<PartFace> faces, Vector2 direction)
    {
        for (var i = 0; i < faces.Length; i++) if (faces[i].Frame.W.Dot(Vector3.Level(direction)) > 0.9) return i;
        throw new System.Diagnostics.UnreachableException();
    }

    /// <summary>Distance of a plan point from a face's left arris, as one looks at it.</summary>
    private static double AcrossOf(Frame3 frame, Point2 p) => frame.ToLocal(new(p.X, p.Y, 0)).Face.X;

    /// <summary>A top newel is notched over the trimmer, from its foot up to the trimmer's top.</summary>
    private static Cut? Notch(StairPlan plan, NewelSite site, ImmutableArray<PartFace> faces, double foot, double head)
    {
        if (site.Role != NewelRole.Top) return null;
        var practice = plan.Job.Practice;
        var depth = practice.Newel / 2 - practice.Riser - practice.Packing;
        // The nosing piece lies on the trimmer; where it is thicker than the floor it goes down further.
        var top = plan.Risers * plan.Rise - Math.Max(practice.FloorBoards, practice.Tread) - foot;
        if (depth <= Tolerance.Same || top <= 0 || top >= head - foot) return null;
        var up = plan.Riser(plan.Risers).Up;
        return new("trimmer", CutKind.Notch, FaceLooking(faces, up), Path2.Rectangle(0, 0, practice.Newel, top), depth, "", null, "over the trimmer");
    }

    /// <summary>At a turn a riser may stand half on the newel and half on the string: its housing must end before it comes behind the string's face.</summary>
    private static void BehindString(StairPlan plan, NewelSite site, List<Finding> findings)
    {
        var practice = plan.Job.Practice;
        if (plan.TurnAt(site.Id) is not { } turn) return;
        var (proud, thick) = (turn.Site.HalfNewel - turn.Site.InnerFace, site.Inner ? plan.InnerThickness : plan.OuterThickness);
        if (practice.NewelHousing <= proud + Tolerance.Same) return;
        var (newel, depth) = (plan.Units.Up(2 * turn.Site.InnerFace + 2 * practice.NewelHousing), plan.Units.Down(proud));
        findings.Add(new("RW4013", Severity.Breach, site.Name,
            $"it stands {(proud < 0 ? $"{plan.Units.Print(-proud)} behind the faces" : $"{plan.Units.Print(proud)} proud")} of its strings, {plan.Units.Print(thick)} thick; housings {plan.Units.Print(practice.NewelHousing)} deep in it come behind their faces",
            $"a newel of {plan.Units.Print(newel)}" + (depth >= 1 ? $", or newel housings {plan.Units.Print(depth)} deep" : "") + ", or thinner strings")
        {
            Remedies =
            [
                Remedy.Of($"a newel of {plan.Units.Print(newel)}", FieldChange.To("practice.newel", newel)),
                .. depth >= 1 ? new[] { Remedy.Of($"newel housings {plan.Units.Print(depth)} deep", FieldChange.To("practice.newelHousing", depth)) } : [],
            ],
        });
    }

    private static void TrimmerAtTurn(StairPlan plan, NewelSite site, List<Finding> findings)
    {
        if (plan.TurnAt(site.Id) is not { } turn || turn.LastLine != plan.Risers) return;
        var past = plan.Job.Practice.Newel / 2 - turn.LastRiser - plan.Job.Practice.Riser - plan.Job.Practice.Packing;
        if (past <= Tolerance.Same) return;
        findings.Add(new("RW4005", Severity.Advice, site.Name,
            $"it reaches {plan.Units.Print(past)} past the trimmer's face behind the last riser",
            $"pack the last riser out by {plan.Units.Print(past)} (practice.packing), or notch the trimmer")
        {
            Remedies = [Remedy.Of($"the last riser packed out by {plan.Units.Print(plan.Units.Up(plan.Job.Practice.Packing + past))}", FieldChange.To("practice.packing", plan.Units.Up(plan.Job.Practice.Packing + past)))],
        });
    }
}
