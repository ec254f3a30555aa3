using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
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

    /// <summary>A flat piece's: every corner of each face, from the board's left end and its lower edge; of a tread or nosing piece, from the nosing's edge.</summary>
    public static IEnumerable<Ordinate> OfFlat(Part part)
    {
        if (part.Kind is PartKind.Tread or PartKind.TaperedTread or PartKind.NosingPiece)
            return TreadCorners.Of(part).Select((p, i) => new Ordinate(part.Mark, part.Name, part.FaceSide.Looks, "outline", "corner " + TreadCorners.Letter(i), p.X, p.Y, null, null, null));
        return OfRiser(part);
    }

    private static IEnumerable<Ordinate> OfRiser(Part part)
    {
        for (var f = 0; f < part.Faces.Length; f++)
        {
            var n = 0;
            foreach (var v in part.Faces[f].Outline.Vertices)
            {
                var on = new Point2(v.At.X - part.Blank.Corner.X, v.At.Y);
                yield return new(part.Mark, part.Name, part.Faces[f].Looks, "outline", $"corner {Number.Print(++n, 0)}", on.X, on.Y, null, null, null);
            }
        }
    }

    /// <summary>What a cut is, in words: "mortice, newel string 1, upper".</summary>
    public static string FeatureOf(Cut cut, Units units)
    {
        var male = cut.Joint.IndexOf('/', StringComparison.Ordinal) is > 0 and var slash ? cut.Joint[..slash].Replace('-', ' ') : "";
        var half = cut.Id.EndsWith("-upper", StringComparison.Ordinal) ? ", upper" : cut.Id.EndsWith("-lower", StringComparison.Ordinal) ? ", lower" : "";
        return cut.Kind switch
        {
            CutKind.Housing => $"housing of {male}",
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
