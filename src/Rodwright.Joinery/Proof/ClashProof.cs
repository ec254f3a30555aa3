using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>Looks for parts that fill one place outside their joints, and for cuts of one newel that meet.</summary>
internal static class ClashProof
{
    private const double LeastArea = 0.05; // square mm in plan: a sliver under 0.01 wide over a housing's depth is not a clash

    public static IEnumerable<Clash> BetweenParts(Kit kit, IReadOnlyList<Prism> prisms)
    {
        var carriers = kit.Parts.Where(p => p.Kind is PartKind.Newel or PartKind.NewelString or PartKind.WallString).ToList();
        foreach (var carrier in carriers)
        {
            foreach (var prism in prisms)
                if (InCarrier(prism, carrier) is { } clash) yield return clash;
        }
        for (var i = 0; i < prisms.Count; i++)
        {
            for (var j = i + 1; j < prisms.Count; j++)
                if (Between(prisms[i], prisms[j]) is { } clash) yield return clash;
        }
        for (var i = 0; i < carriers.Count; i++)
        {
            for (var j = i + 1; j < carriers.Count; j++)
                if (Bodies(carriers[i], carriers[j]) is { } clash) yield return clash;
        }
    }

    /// <summary>What of a step lies inside a string or newel must lie inside cuts made for it.</summary>
    private static Clash? InCarrier(Prism prism, Part carrier) =>
        OutsideHousings(prism, carrier) is { Count: > 0 } inside ? new(prism.Part.Id, carrier.Id, "outside its housing in plan", Left(inside, prism, carrier), true) : null;

    /// <summary>What of a step lies inside a string or newel, in its face's frame, when cuts made for the step do not take all of it; nothing otherwise.</summary>
    internal static IReadOnlyList<Point2> OutsideHousings(Prism prism, Part carrier)
    {
        var face = carrier.FaceSide;
        var box = CarrierBody.Of(carrier);
        var (low, high) = (face.Outline.Bounds.MinY + face.Frame.Origin.Z, face.Outline.Bounds.MaxY + face.Frame.Origin.Z);
        if (prism.Top <= low || prism.Bottom >= high) return [];
        var ring = prism.Plan.Select(p => OnFloorOf(face.Frame, p)).ToList();
        if (!Box2.Of(ring).Overlaps(box, 1e-4)) return [];
        // A hair inside the faces, so that edges that only lie on them do not count.
        var inside = ConvexClip.Inside(ring, Corners(box.Grown(-Tolerance.Joint / 10)));
        return inside.Count < 3 || ConvexClip.Area(inside) < LeastArea || Left(inside, prism, carrier) <= LeastArea ? [] : inside;
    }

    /// <summary>Area of what lies inside a carrier and in no cut made for it.</summary>
    private static double Left(IReadOnlyList<Point2> inside, Prism prism, Part carrier)
    {
        var joint = $"{prism.Part.Id}/{carrier.Id}";
        var rooms = carrier.Cuts.Where(c => c.Joint == joint && c.Kind == CutKind.Housing).Select(c => RoomOf(carrier, c).Grown(Tolerance.Joint / 10)).ToList();
        return ConvexClip.Area(inside) - Covered(inside, rooms, 0);
    }

    /// <summary>Area of a ring inside any of some boxes: each box, less what later boxes cover of it.</summary>
    private static double Covered(IReadOnlyList<Point2> ring, List<Box2> rooms, int first)
    {
        var sum = 0.0;
        for (var i = first; i < rooms.Count && ring.Count >= 3; i++)
        {
            var part = ConvexClip.Inside(ring, Corners(rooms[i]));
            if (part.Count >= 3) sum += ConvexClip.Area(part) - Covered(part, rooms, i + 1);
        }
        return sum;
    }

    internal static Clash? Between(Prism a, Prism b)
    {
        if (Math.Min(a.Top, b.Top) - Math.Max(a.Bottom, b.Bottom) <= Tolerance.Joint) return null;
        if (!a.Box.Overlaps(b.Box, 1e-4)) return null;
        var area = ConvexClip.IsConvex(b.Plan) ? ConvexClip.Area(ConvexClip.Inside(a.Plan, b.Plan))
            : ConvexClip.IsConvex(a.Plan) ? ConvexClip.Area(ConvexClip.Inside(b.Plan, a.Plan))
            : Path2.Polygon(a.Plan).Area - Region.Difference(Path2.Polygon(a.Plan), Path2.Polygon(b.Plan)).Sum(r => r.Area);
        return area <= LeastArea ? null : new(a.Part.Id, b.Part.Id, "in plan", area, true);
    }

    /// <summary>Bodies of strings and newels, tenons left out; a string let into another one at the corner is that joint's matter.</summary>
    internal static Clash? Bodies(Part a, Part b)
    {
        var (ring, frame) = (RingOf(b), a.FaceSide.Frame);
        var local = ring.Select(p => OnFloorOf(frame, p)).ToList();
        var inside = ConvexClip.Inside(local, Corners(CarrierBody.Of(a)));
        var area = inside.Count < 3 ? 0 : ConvexClip.Area(inside);
        var corner = a.Cuts.Concat(b.Cuts).FirstOrDefault(c => c.Kind == CutKind.CornerHousing && (c.Joint == $"{a.Id}/{b.Id}" || c.Joint == $"{b.Id}/{a.Id}"));
        if (corner is not null) area -= corner.Depth * corner.Shape.Bounds.Width;
        var socket = a.Cuts.Concat(b.Cuts).FirstOrDefault(c => c.Kind == CutKind.Dovetail && (c.Joint == $"{a.Id}/{b.Id}" || c.Joint == $"{b.Id}/{a.Id}"));
        if (socket is not null) area -= socket.Depth * socket.Shape.Bounds.Width;
        return area <= LeastArea || CarrierHeights.Pass(a, b, inside) ? null : new(a.Id, b.Id, "in plan", area, true);
    }

    internal static List<Point2> RingOf(Part carrier)
    {
        var frame = carrier.FaceSide.Frame;
        return [.. Corners(CarrierBody.Of(carrier)).Select(p => frame.ToWorld(new(p.X, 0), p.Y).Plan)];
    }

    /// <summary>The room a cut makes, in plan, in the frame of the carrier's first face.</summary>
    private static Box2 RoomOf(Part carrier, Cut cut)
    {
        var (frame, own) = (carrier.FaceSide.Frame, carrier.Faces[cut.Face].Frame);
        var box = cut.Shape.Bounds;
        return Box2.Of(new[] { (box.MinX, 0.0), (box.MaxX, 0.0), (box.MinX, -cut.Depth), (box.MaxX, -cut.Depth) }
            .Select(p => OnFloorOf(frame, own.ToWorld(new(p.Item1, 0), p.Item2).Plan)));
    }

    private static Point2 OnFloorOf(Frame3 frame, Point2 plan)
    {
        var (face, w) = frame.ToLocal(new(plan.X, plan.Y, frame.Origin.Z));
        return new(face.X, w);
    }

    private static Point2[] Corners(Box2 b) => [new(b.MinX, b.MinY), new(b.MaxX, b.MinY), new(b.MaxX, b.MaxY), new(b.MinX, b.MaxY)];

    /// <summary>Cuts of one newel that belong to different joints and share wood. Housings of one step's neighbours may touch but not overlap.</summary>
    public static IEnumerable<Clash> InNewel(Part newel)
    {
        for (var i = 0; i < newel.Cuts.Length; i++)
        {
            for (var j = i + 1; j < newel.Cuts.Length; j++)
            {
                var (a, b) = (newel.Cuts[i], newel.Cuts[j]);
                if (a.Joint == b.Joint || (a.Kind == CutKind.Housing && b.Kind == CutKind.Housing && AreNeighbours(a, b))) continue;
                var shared = Shared(newel, a, b);
                if (shared > Tolerance.Joint) yield return new($"{newel.Id}: {a.Id}", $"{newel.Id}: {b.Id}", "cuts meet", shared, false);
            }
        }
    }

    /// <summary>The least of the three lengths two cuts of a post have in common; negative where they keep apart, mm.</summary>
    internal static double Shared(Part newel, Cut a, Cut b)
    {
        // A housing beside the notch may run out into it, where the trimmer comes; its piece must not.
        if (b.Kind == CutKind.Notch) a = a with { Shape = a.Filled };
        var (ra, rb) = (RoomOf(newel, a), RoomOf(newel, b));
        var (va, vb) = (a.Shape.Bounds, b.Shape.Bounds);
        return new[]
        {
            Math.Min(ra.MaxX, rb.MaxX) - Math.Max(ra.MinX, rb.MinX), Math.Min(ra.MaxY, rb.MaxY) - Math.Max(ra.MinY, rb.MinY),
            Math.Min(va.MaxY, vb.MaxY) - Math.Max(va.MinY, vb.MinY),
        }.Min();
    }

    /// <summary>Housings of a step and the next run into one another; that their pieces do not is proved with the parts.</summary>
    private static bool AreNeighbours(Cut a, Cut b) => Math.Abs(StepOf(a) - StepOf(b)) <= 1;

    private static int StepOf(Cut housing)
    {
        var piece = housing.Joint[..housing.Joint.IndexOf('/', StringComparison.Ordinal)];
        return int.Parse(piece[(piece.LastIndexOf('-') + 1)..], System.Globalization.CultureInfo.InvariantCulture);
    }
}
