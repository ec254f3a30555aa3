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
