using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>Proves wedges driven home, glue blocks rubbed in and pegs in their bores.</summary>
internal static class SmallPartProof
{
    /// <summary>
    /// A wedge fills its space: every corner lies on the outline of the housing or on the piece in it, its two long sides on one and the other, and it stands on the bottom of the housing.
    /// </summary>
    /// <param name="joint">The joint.</param>
    /// <param name="wedge">The wedge.</param>
    /// <param name="string">The string whose housing it is driven into.</param>
    /// <param name="steps">Treads and risers by id, of which it presses one home.</param>
    public static JointProof WedgeDriven(Joint joint, Part wedge, Part @string, IReadOnlyDictionary<string, Prism> steps)
    {
        var face = @string.FaceSide;
        var corners = wedge.FaceSide.Outline.Vertices.Select(v => face.Frame.ToLocal(wedge.FaceSide.Frame.ToWorld(v.At))).ToList();
        var bottom = corners[0].W - wedge.FaceSide.Thickness;
        // In the middle it is outside the piece and inside the housing.
        var middle = new Point2(corners.Average(p => p.Face.X), corners.Average(p => p.Face.Y));
        // Of the housings that could hold it, the one whose outlines it fits.
        var (gap, depth, area) = (double.PositiveInfinity, 0.0, 0.0);
        foreach (var cut in @string.Cuts.Where(c => c is { Kind: CutKind.Housing, Seat: not null } && c.Shape.Bounds.Grown(1).Holds(Box2.Of(corners.Select(p => p.Face)))))
        {
            var pressed = Pressed(face.Frame, steps[cut.Joint.Split('/')[0]], cut.Seat!, middle, corners[0].W, bottom);
            var (onShape, onPiece) = (corners.Count(p => cut.Shape.DistanceTo(p.Face) <= Tolerance.Joint), corners.Count(p => pressed(p.Face) <= Tolerance.Joint));
            var off = corners.Max(p => Math.Min(cut.Shape.DistanceTo(p.Face), pressed(p.Face)));
            if (onShape < 2 || onPiece < 1 || cut.Seat!.Holds(middle) || !cut.Shape.Holds(middle)) continue;
            if (off < gap) (gap, depth, area) = (off, cut.Depth, cut.Shape.Area - cut.Seat!.Area);
        }
        gap = Math.Max(gap, Math.Abs(bottom + depth));
        var left = area - wedge.FaceSide.Outline.Area;
        return new(joint.Id, "driven home", wedge.Id, @string.Id, gap, joint.Depth, wedge.FaceSide.Thickness,
            left > 1 ? "trimmed at the riser's back" : "", gap <= Tolerance.Joint && left > -1);
    }

    /// <summary>
    /// Distance of a point of the string's face from the piece a wedge presses home. Against a riser that is where its back reaches furthest towards the wedge over the wedge's own thickness: a slanting one is touched along
    /// one edge. Under a tread, and at an end of another form, it is the outline pencilled for it.
    /// </summary>
    private static Func<Point2, double> Pressed(Frame3 face, Prism piece, Path2 seat, Point2 middle, double outer, double bottom)
    {
        if (piece.Part.Kind is not (PartKind.Riser or PartKind.TaperedRiser)) return p => seat.DistanceTo(p);
        // Just within: faces of the string and ends of the piece lie in those very planes.
        var along = piece.Along(face, outer - Tolerance.Same).Concat(piece.Along(face, bottom + Tolerance.Same)).Where(s => Math.Min(Math.Abs(s.From - middle.X), Math.Abs(s.To - middle.X)) < piece.Part.FaceSide.Thickness + seat.Bounds.Width).ToList();
        if (along.Count == 0) return p => seat.DistanceTo(p);
        var (low, high) = (along.Min(s => s.From), along.Max(s => s.To));
        var back = middle.X > seat.Bounds.Centre.X ? high : low;
        return p => Math.Abs(p.X - back);
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
