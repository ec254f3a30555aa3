using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>Proves wedges driven home, glue blocks rubbed in and pegs in their bores.</summary>
internal static class SmallPartProof
{
    /// <summary>
    /// A wedge fills its space: every corner lies on the outline of the housing or of the piece in it, its two long sides on one and the other, and it stands on the bottom of the housing.
    /// </summary>
    public static JointProof WedgeDriven(Joint joint, Part wedge, Part @string)
    {
        var face = @string.FaceSide;
        var corners = wedge.FaceSide.Outline.Vertices.Select(v => face.Frame.ToLocal(wedge.FaceSide.Frame.ToWorld(v.At))).ToList();
        // Of the housings that could hold it, the one whose outlines it fits.
        var (gap, depth, area) = (double.PositiveInfinity, 0.0, 0.0);
        foreach (var cut in @string.Cuts.Where(c => c is { Kind: CutKind.Housing, Seat: not null } && c.Shape.Bounds.Grown(1).Holds(Box2.Of(corners.Select(p => p.Face)))))
        {
            var (onShape, onSeat) = (corners.Count(p => cut.Shape.DistanceTo(p.Face) <= Tolerance.Joint), corners.Count(p => cut.Seat!.DistanceTo(p.Face) <= Tolerance.Joint));
            var off = corners.Max(p => Math.Min(cut.Shape.DistanceTo(p.Face), cut.Seat!.DistanceTo(p.Face)));
            // In the middle it is outside the piece and inside the housing.
            var middle = new Point2(corners.Average(p => p.Face.X), corners.Average(p => p.Face.Y));
            if (onShape < 2 || onSeat < 1 || cut.Seat!.Holds(middle) || !cut.Shape.Holds(middle)) continue;
            if (off < gap) (gap, depth, area) = (off, cut.Depth, cut.Shape.Area - cut.Seat!.Area);
        }
        var bottom = corners[0].W - wedge.FaceSide.Thickness;
        gap = Math.Max(gap, Math.Abs(bottom + depth));
        var left = area - wedge.FaceSide.Outline.Area;
        return new(joint.Id, "driven home", wedge.Id, @string.Id, gap, joint.Depth, wedge.FaceSide.Thickness,
            left > 1 ? "trimmed at the riser's back" : "", gap <= Tolerance.Joint && left > -1);
    }

    /// <summary>A block's face against a tread's underside or a riser's back.</summary>
    public static JointProof Rubbed(Joint joint, Part block, Prism piece)
    {
        var frame = block.FaceSide.Frame;
        var top = frame.Origin.Z + block.FaceSide.Outline.Bounds.MaxY;
        double gap;
        if (piece.Part.Kind is PartKind.Riser or PartKind.TaperedRiser or PartKind.BentRiser)
        {
            var ring = Path2.Polygon(piece.Plan);
            gap = new[] { 0, block.FaceSide.Thickness }.Max(d => ring.DistanceTo(frame.ToWorld(Point2.Origin, -d).Plan));
        }
        else gap = Math.Abs(top - piece.Bottom);
        return new(joint.Id, "rubbed in", block.Id, piece.Part.Id, gap, 0, 0, "", gap <= Tolerance.Joint);
    }

    /// <summary>A peg in a newel's bore: the same circle, as long as the bore is deep.</summary>
    public static JointProof PegInBore(Joint joint, Part peg, Part newel)
    {
        var gap = double.PositiveInfinity;
        var (circle, at) = (peg.FaceSide.Outline.Bounds, peg.FaceSide.Frame.ToWorld(peg.FaceSide.Outline.Bounds.Centre));
        foreach (var bore in newel.Cuts.Where(c => c.Kind == CutKind.Bore))
        {
            var own = newel.Faces[bore.Face].Frame.ToWorld(bore.Shape.Bounds.Centre);
            gap = Math.Min(gap, new[] { own.DistanceTo(at), Math.Abs(bore.Shape.Bounds.Width - circle.Width), Math.Abs(bore.Depth - peg.FaceSide.Thickness) }.Max());
        }
        return new(joint.Id, "driven", peg.Id, newel.Id, gap, joint.Depth, peg.FaceSide.Thickness, "", gap <= Tolerance.Joint);
    }
}
