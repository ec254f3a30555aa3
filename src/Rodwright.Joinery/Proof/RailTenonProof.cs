using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>
/// Proves a handrail's tenon in a newel: the shoulder on the newel's face, the tenon in its mortice on all four sides, the clearance at the bottom, the peg's draw. All of it compared in the rail's frame.
/// </summary>
internal static class RailTenonProof
{
    public static JointProof Prove(Joint joint, Part male, Part female, double clearance, double draw, Units units)
    {
        var face = male.FaceSide;
        var mortice = female.Cuts.First(c => c.Joint == joint.Id && c.Kind == CutKind.Mortice);
        var cheeks = male.Cuts.Where(c => c.Joint == joint.Id && c.Kind == CutKind.Cheek).OrderBy(c => c.Depth).ToList();
        var plane = female.Faces[mortice.Face].Frame;
        var shoulder = face.Frame.ToLocal(plane.Origin).Face.X;
        var points = face.Frame.U.Dot(plane.W) < 0 ? 1 : -1;
        var ring = face.Outline.Vertices.Select(v => v.At).ToList();
        var tenon = ring.Where(p => points * (p.X - shoulder) > Tolerance.Joint).ToList();
        if (tenon.Count < 2 || cheeks.Count != 2) return new(joint.Id, "tenoned and draw-bored", male.Id, female.Id, double.PositiveInfinity, joint.Depth - clearance, 0, "", false);
        var reach = tenon.Max(p => points * (p.X - shoulder));
        var corners = mortice.Shape.Vertices.Select(v => face.Frame.ToLocal(plane.ToWorld(v.At))).ToList();
        // The rail's end must stand on the newel's face from its lower to its upper edge.
        var gap = ring.Where(p => Math.Abs(p.X - shoulder) <= 1).Select(p => Math.Abs(p.X - shoulder)).OrderDescending().FirstOrDefault(double.PositiveInfinity);
        gap = new[]
        {
            gap, Math.Abs(tenon.Min(p => p.Y) - corners.Min(c => c.Face.Y)), Math.Abs(tenon.Max(p => p.Y) - corners.Max(c => c.Face.Y)),
            Math.Abs(-cheeks[0].Depth - corners.Max(c => c.W)), Math.Abs(-cheeks[1].Beneath - corners.Min(c => c.W)), Math.Abs(mortice.Depth - clearance - reach),
            Peg(joint, male, female, shoulder, points, draw),
        }.Max();
        return new(joint.Id, "tenoned and draw-bored", male.Id, female.Id, gap, joint.Depth - clearance, reach,
            $"mortice {units.Print(clearance)} deeper than the tenon, peg hole {units.Print(draw)} nearer the shoulder", gap <= Tolerance.Joint);
    }

    private static double Peg(Joint joint, Part male, Part female, double shoulder, int points, double draw)
    {
        var (inTenon, inNewel) = (male.Cuts.FirstOrDefault(c => c.Joint == joint.Id && c.Kind == CutKind.Bore), female.Cuts.FirstOrDefault(c => c.Joint == joint.Id && c.Kind == CutKind.Bore));
        if (inTenon is null || inNewel is null) return double.PositiveInfinity;
        var own = inTenon.Shape.Bounds.Centre;
        var (other, w) = male.FaceSide.Frame.ToLocal(female.Faces[inNewel.Face].Frame.ToWorld(inNewel.Shape.Bounds.Centre, -inNewel.Depth));
        // The bore must come right through the tenon.
        var far = female.Faces[inNewel.Face].Frame.W.Dot(male.FaceSide.Frame.W) > 0 ? -w - inTenon.Depth : inTenon.Beneath + w;
        return new[] { Math.Abs(points * (other.X - own.X) - draw), Math.Abs(other.Y - own.Y), far < 0 ? -far : 0, Math.Abs(inTenon.Shape.Bounds.Width - inNewel.Shape.Bounds.Width) }.Max();
    }
}
