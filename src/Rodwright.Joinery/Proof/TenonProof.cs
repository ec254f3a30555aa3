using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>
/// Proves a string's tenons in a newel: shoulder on the newel's face, both tenons and the haunch in their mortices, the clearance at the bottom, the pegs'
/// draw. All of it compared in the string's frame.
/// </summary>
internal static class TenonProof
{
    public static JointProof Prove(Joint joint, Part male, Part female, double clearance, double draw, Units units)
    {
        var face = male.FaceSide;
        var cheek = male.Cuts.First(c => c.Joint == joint.Id && c.Kind == CutKind.TenonCheek);
        var mortices = female.Cuts.Where(c => c.Joint == joint.Id && c.Kind is CutKind.Mortice or CutKind.Haunch).ToList();
        var plane = female.Faces[mortices[0].Face].Frame;
        var shoulder = face.Frame.ToLocal(plane.Origin).Face.X;
        // The tenon points from the shoulder into the newel, against the way the newel's face looks.
        var points = face.Frame.U.Dot(plane.W) < 0 ? 1 : -1;
        var ring = face.Outline.Vertices.Select(v => v.At).ToList();
        var gap = ring.Min(p => Math.Abs(p.X - shoulder));
        var reach = ring.Max(p => points * (p.X - shoulder));
        var haunch = mortices.First(m => m.Kind == CutKind.Haunch);
        foreach (var mortice in mortices)
        {
            var corners = mortice.Shape.Vertices.Select(v => face.Frame.ToLocal(plane.ToWorld(v.At))).ToList();
            var (low, high) = (corners.Min(c => c.Face.Y), corners.Max(c => c.Face.Y));
            var (back, front) = (corners.Min(c => c.W), corners.Max(c => c.W));
            var depth = mortice.Kind == CutKind.Haunch ? haunch.Depth - clearance : reach;
            // The board's outline on a plumb line near the end of this tenon (or just past the shoulder, for the haunch beside them).
            var own = Upright(ring, shoulder + points * (depth - 0.01)).OrderBy(s => Math.Abs(s.From - low) + Math.Abs(s.To - high)).FirstOrDefault();
            if (mortice.Kind == CutKind.Haunch) own = Upright(ring, shoulder + points * 0.01).Select(s => (Math.Max(s.From, low), Math.Min(s.To, high))).FirstOrDefault();
            gap = Math.Max(gap, Math.Max(Math.Abs(own.From - low), Math.Abs(own.To - high)));
            gap = Math.Max(gap, Math.Max(Math.Abs(back + face.Thickness), Math.Abs(front + cheek.Depth)));
            gap = Math.Max(gap, Math.Abs(mortice.Depth - clearance - depth));
        }
        gap = Math.Max(gap, Pegs(joint, male, female, shoulder, points, draw));
        return new(joint.Id, "tenoned and draw-bored", male.Id, female.Id, gap, joint.Depth - clearance, reach,
            $"mortice {units.Print(clearance)} deeper than the tenon, peg holes {units.Print(draw)} nearer the shoulder", gap <= Tolerance.Joint);
    }

    private static double Pegs(Joint joint, Part male, Part female, double shoulder, int points, double draw)
    {
        var worst = 0.0;
        var inTenon = male.Cuts.Where(c => c.Joint == joint.Id && c.Kind == CutKind.Bore).Select(c => c.Shape.Bounds.Centre).OrderBy(p => p.Y).ToList();
        var inNewel = female.Cuts.Where(c => c.Joint == joint.Id && c.Kind == CutKind.Bore)
            .Select(c => male.FaceSide.Frame.ToLocal(female.Faces[c.Face].Frame.ToWorld(c.Shape.Bounds.Centre)).Face).OrderBy(p => p.Y).ToList();
        if (inTenon.Count != inNewel.Count) return double.PositiveInfinity;
        for (var i = 0; i < inTenon.Count; i++)
        {
            var nearer = points * (inNewel[i].X - shoulder) - points * (inTenon[i].X - shoulder);
            worst = Math.Max(worst, Math.Max(Math.Abs(nearer - draw), Math.Abs(inNewel[i].Y - inTenon[i].Y)));
        }
        return worst;
    }

    private static List<(double From, double To)> Upright(List<Point2> ring, double u)
    {
        var crossings = new List<double>();
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++)
        {
            var (a, b) = (ring[i].X - u, ring[j].X - u);
            if (a >= 0 != b >= 0) crossings.Add(ring[i].Y + (ring[j].Y - ring[i].Y) * a / (a - b));
        }
        crossings.Sort();
        return [.. Enumerable.Range(0, crossings.Count / 2).Select(i => (crossings[2 * i], crossings[2 * i + 1]))];
    }
}
