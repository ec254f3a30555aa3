using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>Proves the open edges of landings: base rail on nosing, nosing on apron.</summary>
internal static class LandingEdgeProof
{
    /// <summary>The base rail's underside on the nosing's top, no wider than it.</summary>
    public static JointProof RailOnNosing(Joint joint, Part rail, Part nosing)
    {
        var gap = Math.Max(Math.Abs(Bottom(rail) - nosing.FaceSide.Frame.Origin.Z), Outside(rail, nosing));
        return new(joint.Id, "screwed down", rail.Id, nosing.Id, gap, 0, 0, "", gap <= Tolerance.Joint);
    }

    /// <summary>The nosing's underside on the apron's top edge, which lies wholly beneath it.</summary>
    public static JointProof NosingOnApron(Joint joint, Part nosing, Part apron)
    {
        var under = nosing.FaceSide.Frame.Origin.Z - nosing.FaceSide.Thickness;
        var gap = Math.Max(Math.Abs(apron.FaceSide.Frame.Origin.Z + apron.FaceSide.Outline.Bounds.MaxY - under), Outside(apron, nosing));
        return new(joint.Id, "glued and pinned", nosing.Id, apron.Id, gap, 0, 0, "", gap <= Tolerance.Joint);
    }

    /// <summary>A corner of the well: an end of the one lies wholly on the other's outline in plan, at the same height.</summary>
    public static JointProof Corner(Joint joint, Part piece, Part other)
    {
        var (a, b) = (PlanOf(piece), PlanOf(other));
        var outline = Path2.Polygon(b.Ring);
        var (gap, length) = (double.PositiveInfinity, 0.0);
        // Both long sides are longer than any end: the end that lies nearest is the joint's.
        for (int i = a.Ring.Count - 1, j = 0; j < a.Ring.Count; i = j++)
        {
            var off = new[] { a.Ring[i], a.Ring[i].Towards(a.Ring[j], 0.5), a.Ring[j] }.Max(outline.DistanceTo);
            if (off < gap) (gap, length) = (off, a.Ring[i].DistanceTo(a.Ring[j]));
        }
        gap = Math.Max(gap, Math.Max(Math.Abs(a.Top - b.Top), Math.Abs(a.Bottom - b.Bottom)));
        var meets = length > 1;
        return new(joint.Id, piece.Kind == PartKind.Apron && piece.Faces.Length == 1 ? "butted" : "mitred", piece.Id, other.Id, meets ? gap : double.PositiveInfinity, 0, 0, "", meets && gap <= Tolerance.Joint);
    }

    /// <summary>What a piece covers in plan, and between which heights: of an upright one with bevelled ends its top edge tells.</summary>
    private static (List<Point2> Ring, double Top, double Bottom) PlanOf(Part part)
    {
        var face = part.Faces.FirstOrDefault(f => f.Frame.W.Z > 0.5);
        if (face is null)
        {
            var body = UprightBody.Of(part);
            return (body.Plan, body.High, body.Low);
        }
        return ([.. face.Outline.Flattened().Select(p => face.Frame.ToWorld(p).Plan)], face.Frame.Origin.Z, face.Frame.Origin.Z - face.Thickness);
    }

    private static double Bottom(Part upright) => upright.FaceSide.Frame.Origin.Z + upright.FaceSide.Outline.Bounds.MinY;

    /// <summary>How far an upright piece stands out past a level one in plan, at most; 0 where it lies within it.</summary>
    private static double Outside(Part upright, Part level)
    {
        var (frame, box) = (upright.FaceSide.Frame, upright.FaceSide.Outline.Bounds);
        var room = level.FaceSide.Outline.Bounds;
        var worst = 0.0;
        foreach (var (x, w) in new[] { (box.MinX, 0.0), (box.MaxX, 0.0), (box.MinX, -upright.FaceSide.Thickness), (box.MaxX, -upright.FaceSide.Thickness) })
        {
            var p = level.FaceSide.Frame.ToLocal(frame.ToWorld(new(x, 0), w)).Face;
            worst = Math.Max(worst, new[] { room.MinX - p.X, p.X - room.MaxX, room.MinY - p.Y, p.Y - room.MaxY }.Max());
        }
        return worst;
    }
}
