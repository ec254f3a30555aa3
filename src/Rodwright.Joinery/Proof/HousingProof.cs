using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>
/// Proves a housed end: the end's section in the face plane against the outline of the housing, both ways, and how far the end reaches in.
/// </summary>
internal static class HousingProof
{
    // Just behind the face: the plane itself runs along edges of the ring.
    private const double JustInside = 1e-5;

    public static JointProof Prove(Joint joint, Prism prism, Part female)
    {
        var male = prism.Part;
        var (gap, reached) = (0.0, double.PositiveInfinity);
        var stated = new List<string>();
        foreach (var cut in female.Cuts.Where(c => c.Joint == joint.Id && c.Kind == CutKind.Housing))
        {
            var face = female.Faces[cut.Face];
            // A string's tenons are no part of the face the end is housed in.
            var body = cut.Face == 0 ? CarrierBody.Of(female) : CarrierBody.OnFace(female, cut.Face);
            var (min, max) = (body.MinX, body.MaxX);
            var seat = cut.Filled.Bounds;
            var stretch = prism.Along(face.Frame, -JustInside)
                .Select(s => (From: Math.Max(s.From, Math.Min(min, seat.MinX)), To: Math.Min(s.To, max)))
                .OrderByDescending(s => Math.Min(s.To, seat.MaxX) - Math.Max(s.From, seat.MinX)).FirstOrDefault();
            if (stretch.To <= stretch.From) return new(joint.Id, "housed", male.Id, female.Id, double.PositiveInfinity, joint.Depth, 0, "the end does not enter its housing", false);
            gap = Math.Max(gap, Math.Max(EndOnSeat(prism, face, cut, stretch, max), SeatOnEnd(prism, face, cut, stretch, max)));
            if (cut.Seat is { } own && own.Vertices.Any(v => v.At.X >= min && v.At.X <= max && !OnOrIn(cut.Shape, v.At))) gap = double.PositiveInfinity;
            if (LeavesTheBoard(female, cut))
            {
                // A nosing piece thicker than the floor is rebated over the trimmer where the string's seat ends; anything else would hang free.
                if (male.Kind == PartKind.NosingPiece) stated.Add("rebated over the trimmer");
                else gap = double.PositiveInfinity;
            }
            reached = Math.Min(reached, Reach(prism, face.Frame, stretch, cut.Depth));
            if (cut.Seat is not null) stated.Add(cut.Note.Length > 0 ? cut.Note : "wedge space");
        }
        if (male.Kind == PartKind.TaperedRiser) stated.Add("end eased to stay within the square housing");
        return new(joint.Id, "housed", male.Id, female.Id, gap, joint.Depth, reached, string.Join(", ", stated.Distinct()),
            gap <= Tolerance.Joint && reached >= joint.Depth - Tolerance.Joint);
    }

    /// <summary>Each place round the end's section, to the seat's outline.</summary>
    private static double EndOnSeat(Prism prism, PartFace face, Cut cut, (double From, double To) stretch, double max)
    {
        var worst = 0.0;
        foreach (var u in Samples(stretch))
        {
            if (u > max) continue;
            var (low, high) = HeightsAt(prism, face, u);
            worst = Math.Max(worst, Math.Max(cut.Filled.DistanceTo(new(u, low)), cut.Filled.DistanceTo(new(u, high))));
        }
        return worst;
    }

    /// <summary>Each corner of the seat, to the end's section.</summary>
    private static double SeatOnEnd(Prism prism, PartFace face, Cut cut, (double From, double To) stretch, double max)
    {
        var worst = 0.0;
        foreach (var v in cut.Filled.Vertices)
        {
            if (v.At.X > max + Tolerance.Joint) continue;
            var u = Math.Clamp(v.At.X, stretch.From, stretch.To);
            var (low, high) = HeightsAt(prism, face, u);
            var across = Math.Abs(v.At.X - u);
            var up = Math.Min(Math.Abs(v.At.Y - low), Math.Abs(v.At.Y - high));
            // On the two upright ends any height between the surfaces lies on the section.
            var onEnd = u <= stretch.From + Tolerance.Joint || u >= stretch.To - Tolerance.Joint;
            if (onEnd && v.At.Y > low - Tolerance.Joint && v.At.Y < high + Tolerance.Joint) up = 0;
            worst = Math.Max(worst, Math.Max(across, up));
        }
        return worst;
    }

    private static IEnumerable<double> Samples((double From, double To) s)
    {
        const int n = 8;
        for (var i = 0; i <= n; i++) yield return s.From + (s.To - s.From) * i / n;
        for (var d = 1.0; d < Math.Min(16, (s.To - s.From) / 2); d += 3)
        {
            yield return s.From + d;
            yield return s.To - d;
        }
    }

    private static (double Low, double High) HeightsAt(Prism prism, PartFace face, double u)
    {
        var (low, high) = prism.HeightsAt(face.Frame.ToWorld(new(u, 0), -JustInside).Plan);
        return (low - face.Frame.Origin.Z, high - face.Frame.Origin.Z);
    }

    private static double Reach(Prism prism, Frame3 face, (double From, double To) stretch, double depth)
    {
        // Corners that stand behind this stretch of the face, and places between them.
        var best = prism.Plan.Select(p => face.ToLocal(new(p.X, p.Y, face.Origin.Z)))
            .Where(p => p.W < 0 && p.W > -depth - 1 && p.Face.X > stretch.From - Tolerance.Joint && p.Face.X < stretch.To + Tolerance.Joint)
            .Select(p => -p.W).DefaultIfEmpty(0).Max();
        for (var i = 1; i < 8; i++)
        {
            foreach (var (from, to) in prism.Into(face, stretch.From + (stretch.To - stretch.From) * i / 8))
                if (to > -JustInside && from < 0) best = Math.Max(best, -from);
        }
        return best;
    }

    /// <summary>
    /// A housing that reaches past the outline of its string leaves the piece's end unheld there; a newel's run out at its arrises by intention.
    /// </summary>
    private static bool LeavesTheBoard(Part female, Cut cut) => female.Kind != PartKind.Newel &&
        cut.Filled.Vertices.Any(v => !OnOrIn(female.Faces[cut.Face].Outline, v.At) && female.Faces[cut.Face].Outline.DistanceTo(v.At) > Tolerance.Joint);

    private static bool OnOrIn(Path2 shape, Point2 p) => shape.DistanceTo(p) < 1e-6 || shape.Holds(p);
}
