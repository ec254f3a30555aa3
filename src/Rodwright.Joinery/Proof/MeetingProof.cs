using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>Proves faces that only meet, and the corner of the wall strings.</summary>
internal static class MeetingProof
{
    /// <summary>The riser's face against the back of the tread below it, or the riser standing on that tread.</summary>
    public static JointProof RiserToTread(Joint joint, Prism r, Prism t, bool standsOn)
    {
        var (riser, tread) = (r.Part, t.Part);
        if (standsOn)
        {
            var step = Math.Abs(r.Bottom - t.Top);
            return new(joint.Id, "stands on", riser.Id, tread.Id, step, 0, 0, "", step <= Tolerance.Joint);
        }
        var face = riser.FaceSide.Frame;
        var backs = t.Plan.Select(p => face.ToLocal(new(p.X, p.Y, 0))).Where(p => Math.Abs(p.W) <= 1).ToList();
        var gap = backs.Count < 2 ? double.PositiveInfinity : backs.Select(p => Math.Abs(p.W)).Order().Take(2).Max();
        var meets = backs.Count >= 2 ? backs.Max(p => p.Face.X) - backs.Min(p => p.Face.X) : 0;
        var shares = Math.Min(r.Top, t.Top) - Math.Max(r.Bottom, t.Bottom);
        return new(joint.Id, "glued and screwed", riser.Id, tread.Id, gap, 0, 0, "", gap <= Tolerance.Joint && meets > 1 && shares > Tolerance.Joint);
    }

    /// <summary>Tails in their sockets: each socket's corners are corners of the tails, as far along the lower string as the upper one is thick, and every tail has its socket.</summary>
    private static JointProof Dovetailed(Joint joint, Part male, Part female)
    {
        var (plane, own) = (female.FaceSide.Frame, male.FaceSide);
        // What of the upper string lies behind the lower one's face.
        double Behind(Point2 p) => -plane.ToLocal(own.Frame.ToWorld(p)).W;
        var reach = own.Outline.Vertices.Max(v => Behind(v.At));
        var corners = own.Outline.Vertices.Select(v => v.At).Where(p => Behind(p) > reach - Tolerance.Joint).ToList();
        var (gap, taken) = (0.0, 0);
        foreach (var socket in female.Cuts.Where(c => c.Joint == joint.Id && c.Kind == CutKind.Dovetail))
        {
            var frame = female.Faces[socket.Face].Frame;
            foreach (var v in socket.Shape.Vertices)
            {
                var (near, far) = (own.Frame.ToLocal(frame.ToWorld(v.At)), own.Frame.ToLocal(frame.ToWorld(v.At, -socket.Depth)));
                gap = Math.Max(gap, own.Outline.Vertices.Min(o => o.At.DistanceTo(near.Face)));
                // From the end to the face side of the upper string, or the other way round.
                gap = Math.Max(gap, Math.Abs(Math.Max(near.W, far.W)) + Math.Abs(Math.Min(near.W, far.W) + own.Thickness));
                if (corners.Exists(c => c.DistanceTo(near.Face) <= Tolerance.Joint)) taken++;
            }
        }
        if (taken != corners.Count || corners.Count == 0) gap = double.PositiveInfinity;
        return new(joint.Id, "dovetailed at the corner", male.Id, female.Id, gap, joint.Depth, reach, "", gap <= Tolerance.Joint && Math.Abs(reach - joint.Depth) <= Tolerance.Joint);
    }

    /// <summary>A tread's or nosing piece's underside on the riser's top edge.</summary>
    public static JointProof TreadOnRiser(Joint joint, Prism tread, Prism riser)
    {
        var gap = Math.Abs(tread.Bottom - riser.Top);
        return new(joint.Id, "rests on", tread.Part.Id, riser.Part.Id, gap, 0, 0, "", gap <= Tolerance.Joint);
    }

    /// <summary>The upper wall string's end in the face of the lower one.</summary>
    public static JointProof Corner(Joint joint, Part male, Part female)
    {
        if (female.Cuts.Any(c => c.Joint == joint.Id && c.Kind == CutKind.Dovetail)) return Dovetailed(joint, male, female);
        var cut = female.Cuts.First(c => c.Joint == joint.Id);
        var frame = female.Faces[cut.Face].Frame;
        var own = male.FaceSide.Outline;
        // A tongue is what its two cheeks leave.
        var cheeks = male.Cuts.Where(c => c.Joint == joint.Id && c.Kind == CutKind.Cheek).OrderBy(c => c.Depth).ToList();
        var (near, far) = cheeks.Count == 2 ? (cheeks[0].Depth, cheeks[1].Beneath) : (0, male.FaceSide.Thickness);
        var ends = own.Vertices.Select(v => frame.ToLocal(male.FaceSide.Frame.ToWorld(v.At, -near))).ToList();
        var reach = -ends.Min(p => p.W);
        // The end grain: the corners of the outline furthest in, and the same at the board's back.
        var face = ends.Where(p => -p.W > reach - Tolerance.Joint).Select(p => p.Face).ToList();
        var back = own.Vertices.Select(v => frame.ToLocal(male.FaceSide.Frame.ToWorld(v.At, -far)))
            .Where(p => -p.W > reach - Tolerance.Joint).Select(p => p.Face);
        var end = Box2.Of(face.Concat(back));
        var housing = cut.Shape.Bounds;
        var gap = new[] { end.MinX - housing.MinX, end.MaxX - housing.MaxX, end.MinY - housing.MinY, end.MaxY - housing.MaxY }.Max(Math.Abs);
        return new(joint.Id, cheeks.Count == 2 ? "tongued at the corner" : "let in at the corner", male.Id, female.Id, gap, joint.Depth, reach, "", gap <= Tolerance.Joint && Math.Abs(reach - joint.Depth) <= Tolerance.Joint);
    }
}
