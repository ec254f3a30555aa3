using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Steps;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Tables;

/// <summary>Ordinates of newels, treads, nosing pieces and risers.</summary>
internal static class PieceOrdinates
{
    /// <summary>A newel's: on each face, from its left arris and up from the foot.</summary>
    public static IEnumerable<Ordinate> OfNewel(Part part, Units units)
    {
        var foot = part.FaceSide.Frame.Origin.Z;
        foreach (var cut in part.Cuts.OrderBy(c => c.Face).ThenBy(c => c.Shape.Bounds.MinY))
        {
            var feature = FeatureOf(cut, units);
            var box = cut.Filled.Bounds;
            if (cut.Kind == CutKind.Bore)
            {
                yield return At(cut, feature, "centre", box.Centre);
                continue;
            }
            // What stands past the arris is not this face's to mark.
            var (left, right) = (Math.Max(0, box.MinX), Math.Min(part.Blank.Width, box.MaxX));
            yield return At(cut, feature, "bottom, left", new(left, box.MinY));
            yield return At(cut, feature, "top, right", new(right, box.MaxY));
            var whole = cut.Shape.Bounds;
            if (whole.MinX < left - Tolerance.Joint) yield return At(cut, feature, cut.Note, new(whole.MinX, box.MaxY));
            if (whole.MaxX > right + Tolerance.Joint) yield return At(cut, feature, cut.Note, new(whole.MaxX, box.MaxY));
        }

        Ordinate At(Cut cut, string feature, string point, Point2 p) =>
            new(part.Mark, part.Name, $"face {part.Faces[cut.Face].Looks}", feature, point, p.X, p.Y, null, foot + p.Y, cut.Depth);
    }

    /// <summary>A flat piece's: every corner of each face, from the board's left end and its lower edge; of a tread or nosing piece, from the nosing's edge. Then the centre of each arc.</summary>
    public static IEnumerable<Ordinate> OfFlat(Part part, Units units)
    {
        if (part.Kind is PartKind.Tread or PartKind.TaperedTread or PartKind.NosingPiece)
        {
            var corners = TreadCorners.Of(part);
            for (var i = 0; i < corners.Length; i++)
                yield return new(part.Mark, part.Name, part.FaceSide.Looks, "outline", "corner " + TreadCorners.Letter(i), corners[i].X, corners[i].Y, null, null, null);
            foreach (var arc in Arcs(part, part.FaceSide, units)) yield return arc;
            yield break;
        }
        foreach (var face in part.Faces)
        {
            for (var i = 0; i < face.Outline.Vertices.Length; i++)
            {
                var on = Measured(part, face.Outline.Vertices[i].At);
                yield return new(part.Mark, part.Name, face.Looks, "outline", $"corner {Number.Print(i + 1, 0)}", on.X, on.Y, null, null, null);
            }
            foreach (var arc in Arcs(part, face, units)) yield return arc;
        }
    }

    /// <summary>
    /// Where a point of a face lies on the board. A piece of one face, a rail, a baluster or a wedge, may stand at any slope in the stair: on its board it lies along the grain,
    /// as its own sheet shows it.
    /// </summary>
    private static Point2 Measured(Part part, Point2 at) =>
        part.Faces.Length == 1 && part.Kind is not (PartKind.Tread or PartKind.TaperedTread or PartKind.NosingPiece or PartKind.Riser or PartKind.TaperedRiser) ? part.Blank.OnBoard(at) : TreadCorners.Measured(part, at);

    private static IEnumerable<Ordinate> Arcs(Part part, PartFace face, Units units)
    {
        for (var i = 0; i < face.Outline.EdgeCount; i++)
        {
            var (from, to, bulge) = face.Outline.Edge(i);
            if (bulge == 0) continue;
            var arc = Arc2.FromBulge(from, to, bulge);
            var centre = Measured(part, arc.Centre);
            yield return new(part.Mark, part.Name, face.Looks, $"outline, arc of radius {units.Print(arc.Radius)}", "centre", centre.X, centre.Y, null, null, null);
        }
    }

    /// <summary>A bent riser's, as the flat board it is before it is bent: its corners and the lines squared across it.</summary>
    public static IEnumerable<Ordinate> OfFlatRiser(Part part, FlatRiser board)
    {
        var corners = Path2.Rectangle(0, 0, board.Length, board.Height).Vertices;
        for (var i = 0; i < corners.Length; i++) yield return Row("face", "outline before it is bent", "corner " + Number.Print(i + 1, 0), corners[i].At);
        foreach (var line in board.Lines) yield return Row("face", "squared across", line.What, new(line.X, 0));
        for (var i = 0; i < board.Edge.Vertices.Length; i++) yield return Row("top edge", "outline before it is bent", "corner " + Number.Print(i + 1, 0), board.Edge.Vertices[i].At);

        Ordinate Row(string face, string feature, string point, Point2 at) => new(part.Mark, part.Name, face, feature, point, at.X, at.Y, null, null, null);
    }

    /// <summary>What a cut is, in words: "mortice, newel string 1, upper".</summary>
    public static string FeatureOf(Cut cut, Units units)
    {
        var male = cut.Joint.IndexOf('/', StringComparison.Ordinal) is > 0 and var slash ? cut.Joint[..slash].Replace('-', ' ') : "";
        var half = cut.Id.EndsWith("-upper", StringComparison.Ordinal) ? ", upper" : cut.Id.EndsWith("-lower", StringComparison.Ordinal) ? ", lower" : "";
        return cut.Kind switch
        {
            CutKind.Housing => $"housing of {male}",
            CutKind.Dovetail => $"socket of {male}",
            CutKind.Mortice => $"mortice of {male}{half}",
            CutKind.Haunch => $"haunch of {male}",
            CutKind.Bore => $"peg of {male}{half}, ø{units.Print(cut.Shape.Bounds.Width)}",
            CutKind.Notch => $"notch {cut.Note}",
            CutKind.Split => $"half {cut.Note}",
            CutKind.TenonCheek => $"cheek to {male}",
            CutKind.CornerHousing => $"housing of {male}",
            CutKind.RoundedEdge => "nosing",
            CutKind.Cheek => $"cheek to {male}",
            CutKind.Groove => "groove",
            CutKind.Recess => $"recess for {male}",
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
