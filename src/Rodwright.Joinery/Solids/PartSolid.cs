using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Solids;

/// <summary>A part as a closed solid, read from its description alone.</summary>
public static class PartSolid
{
    /// <summary>How far what is cut or kept is carried past the wood, where it ends outside it, mm.</summary>
    private const double Past = 1;

    /// <summary>The part's solid in the frame of its first face.</summary>
    /// <param name="part">Any part.</param>
    /// <param name="chord">How far a chord may leave the arc it stands for, mm.</param>
    public static Solid Of(Part part, double chord = Tolerance.Chord)
    {
        // The nosing of a rounded step is bent; nothing else is cut in its tread.
        if (part.Cuts is [{ Kind: CutKind.RoundedEdge, Shape.EdgeCount: > 1 } nosing])
            return RoundedBoard.Of(part.FaceSide.Outline, nosing.Shape, nosing.Depth, part.FaceSide.Thickness, chord);
        var kept = part.Faces.Where(NotTold).Select(f => new Extrusion(f.Frame, f.Outline, f.Thickness)).ToList();
        var cuts = new List<Extrusion>();
        foreach (var cut in part.Cuts)
        {
            var face = part.Faces[cut.Face];
            if (cut.Kind == CutKind.RoundedEdge) kept.Add(Rounded(face, cut));
            else cuts.Add(Taken(face, cut));
        }
        return SolidMaker.Of(kept, cuts, chord);

        // The face opposite another says nothing new when both are the same rectangle, as on a newel.
        bool NotTold(PartFace face) => !part.Faces.TakeWhile(f => !ReferenceEquals(f, face)).Any(f => IsSameFromBehind(f, face));
    }

    /// <summary>What a cut takes away.</summary>
    internal static Extrusion Taken(PartFace face, Cut cut) => cut.Beneath == 0
        ? new(face.Frame, cut.Shape, cut.Depth)
        : new(new(face.Frame.ToWorld(Point2.Origin, -cut.Beneath), face.Frame.U, face.Frame.V), cut.Shape, cut.Depth - cut.Beneath);

    private static bool IsSameFromBehind(PartFace front, PartFace back)
    {
        var (at, w) = front.Frame.ToLocal(back.Frame.Origin);
        if (back.Frame.W.Dot(front.Frame.W) > -1 + 1e-12 || !Tolerance.IsSame(w, -front.Thickness) || !Tolerance.IsSame(front.Thickness, back.Thickness)) return false;
        var corners = back.Outline.Vertices;
        return corners.Length == front.Outline.Vertices.Length && corners.All(v =>
        {
            var (seen, _) = front.Frame.ToLocal(back.Frame.ToWorld(v.At));
            return v.Bulge == 0 && front.Outline.Vertices.Any(f => f.Bulge == 0 && f.At.IsSame(seen));
        });
    }

    /// <summary>
    /// What a rounded edge leaves: nothing before the line; both arrises of the edge are rounded to the radius, which makes a half-round when it is half the thickness. Seen along the
    /// edge: x into the wood from the line, y up from the back of the face.
    /// </summary>
    internal static Extrusion Rounded(PartFace face, Cut cut)
    {
        var (from, to, _) = cut.Shape.Edge(0);
        if (Line2.Between(from, to).LeftOf(face.Outline.Bounds.Centre) < 0) (from, to) = (to, from);
        var (frame, radius, thick) = (face.Frame, cut.Depth, face.Thickness);
        var along = (to - from).Unit;
        var box = face.Outline.Bounds;
        var length = from.DistanceTo(to) + box.Width + box.Height; // past the wood at both ends
        // With x into the wood and y out of the face the third axis runs on along the edge: the extrusion is carried back from the far end.
        var end = from.Towards(to, 0.5) + length / 2 * along;
        var basis = new Frame3(frame.ToWorld(end), along.Left.X * frame.U + along.Left.Y * frame.V, frame.W);
        var far = box.Width + box.Height + Past;
        var quarter = Angle.Tan(Math.PI / 8);
        List<Vertex2> profile = [new(new(far, 0)), new(new(radius, 0), quarter), new(new(0, -radius))];
        if (thick - 2 * radius > Tolerance.Same) profile.Add(new(new(0, radius - thick), quarter));
        else profile[^1] = profile[^1] with { Bulge = quarter };
        profile.AddRange([new(new(radius, -thick)), new(new(far, -thick))]);
        return new(basis, new(profile, true), length);
    }
}
