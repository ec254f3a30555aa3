using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>Proves what a balustrade's pieces have in common besides tenons: base rails on strings and against newels, balusters and fillets in grooves, caps on newels.</summary>
internal static class RailProof
{
    // Nearer than this an edge is meant to lie on the other piece, mm.
    private const double Near = 1;

    /// <summary>The base rail's lower edge on the string's upper one.</summary>
    public static JointProof OnString(Joint joint, Part rail, Part @string)
    {
        var (frame, edge) = (@string.FaceSide.Frame, @string.FaceSide.Outline);
        var ring = rail.FaceSide.Outline.Flattened().Select(p => frame.ToLocal(rail.FaceSide.Frame.ToWorld(p)).Face).ToList();
        var (gap, length) = (0.0, 0.0);
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++)
        {
            var (a, b) = (edge.DistanceTo(ring[i]), edge.DistanceTo(ring[j]));
            var m = edge.DistanceTo(ring[i].Towards(ring[j], 0.5));
            if (a > Near || b > Near || m > Near) continue;
            gap = Math.Max(gap, Math.Max(a, b));
            length += Math.Abs(ring[i].X - ring[j].X);
        }
        var whole = rail.FaceSide.Outline.Bounds.Width;
        // The narrower of the two lies wholly within the width of the other.
        var (near, far) = Across(rail, @string);
        var over = Math.Min(Math.Max(near, -@string.FaceSide.Thickness - far), Math.Max(-near, far + @string.FaceSide.Thickness));
        gap = length < whole - Tolerance.Joint ? double.PositiveInfinity : Math.Max(gap, over);
        return new(joint.Id, "glued and screwed on", rail.Id, @string.Id, gap, 0, 0, "", gap <= Tolerance.Joint);
    }

    /// <summary>An end scribed to the lower edge of the string of a flight above: every point of it near that edge lies on it, none beyond it, and it lies under some of the string's thickness.</summary>
    public static JointProof UnderString(Joint joint, Part piece, Part @string)
    {
        var (frame, edge) = (@string.FaceSide.Frame, @string.FaceSide.Outline);
        var ring = piece.FaceSide.Outline.Flattened().Select(p => frame.ToLocal(piece.FaceSide.Frame.ToWorld(p)).Face).ToList();
        var (gap, length) = (0.0, 0.0);
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++)
        {
            gap = Math.Max(gap, edge.Holds(ring[j]) ? edge.DistanceTo(ring[j]) : 0);
            var off = new[] { ring[i], ring[i].Towards(ring[j], 0.5), ring[j] }.Max(edge.DistanceTo);
            if (off > Near) continue;
            gap = Math.Max(gap, off);
            length += ring[i].DistanceTo(ring[j]);
        }
        var (near, far) = Across(piece, @string);
        var lap = Math.Min(0, near) - Math.Max(-@string.FaceSide.Thickness, far);
        var meets = length > 1 && lap > Tolerance.Joint;
        return new(joint.Id, "scribed under the string", piece.Id, @string.Id, meets ? gap : double.PositiveInfinity, 0, 0, "", meets && gap <= Tolerance.Joint);
    }

    /// <summary>How far in front of a string's face a piece begins and ends, mm.</summary>
    private static (double Near, double Far) Across(Part piece, Part @string)
    {
        var w = new[] { 0, -piece.FaceSide.Thickness }.Select(d => @string.FaceSide.Frame.ToLocal(piece.FaceSide.Frame.ToWorld(Point2.Origin, d)).W).ToList();
        return (w.Max(), w.Min());
    }

    /// <summary>A rail's plumb end against a newel's face.</summary>
    public static JointProof ToNewel(Joint joint, Part rail, Part newel)
    {
        var frame = rail.FaceSide.Frame;
        var box = rail.FaceSide.Outline.Bounds;
        // Of the newel's faces, the one across the rail that lies nearest to an end.
        var gap = newel.Faces.Where(f => Math.Abs(f.Frame.W.Dot(frame.U)) > 1 - 1e-9).Select(f => (At: frame.ToLocal(f.Frame.Origin).Face.X, Looks: f.Frame.W.Dot(frame.U)))
            .Select(f => Math.Abs(f.At - (f.Looks > 0 ? box.MinX : box.MaxX))).DefaultIfEmpty(double.PositiveInfinity).Min();
        return new(joint.Id, "butted", rail.Id, newel.Id, gap, 0, 0, "", gap <= Tolerance.Joint);
    }

    /// <summary>A baluster's end, or a fillet, in a groove: as wide as it, and home on its bottom.</summary>
    public static JointProof InGroove(Joint joint, Part piece, Part rail)
    {
        var frame = rail.FaceSide.Frame;
        var groove = rail.Cuts.FirstOrDefault(c => c.Kind == CutKind.Groove);
        var ends = piece.FaceSide.Outline.Flattened().Select(p => frame.ToLocal(piece.FaceSide.Frame.ToWorld(p))).ToList();
        var outline = rail.FaceSide.Outline;
        if (groove is null)
        {
            // Without grooves balusters stand against the rails' edges.
            var off = ends.Select(p => outline.DistanceTo(p.Face)).Order().Take(2).Max();
            return new(joint.Id, "against the rail", piece.Id, rail.Id, off, 0, 0, "", off <= Tolerance.Joint);
        }
        var inside = ends.Where(p => groove.Shape.DistanceTo(p.Face) <= Near || groove.Shape.Holds(p.Face)).ToList();
        // A piece cut short by a string above may have one corner left in the groove.
        if (joint.Depth == 0) inside = [.. inside.Where(p => p.Face.X >= groove.Shape.Bounds.MinX - Tolerance.Joint && p.Face.X <= groove.Shape.Bounds.MaxX + Tolerance.Joint)];
        if (inside.Count < (joint.Depth == 0 ? 1 : 2)) return new(joint.Id, "in the groove", piece.Id, rail.Id, double.PositiveInfinity, joint.Depth, 0, "no end comes into the groove", false);
        var w = ends[0].W;
        var sides = Math.Max(Math.Abs(w + groove.Beneath), Math.Abs(w - piece.FaceSide.Thickness + groove.Depth));
        var gap = Math.Max(sides, inside.Max(p => groove.Shape.DistanceTo(p.Face)));
        var reached = inside.Max(p => outline.DistanceTo(p.Face));
        return new(joint.Id, "in the groove", piece.Id, rail.Id, gap, joint.Depth, reached, "", gap <= Tolerance.Joint && reached >= joint.Depth - Tolerance.Joint);
    }

    /// <summary>A bracket's top on the underside of its rail, within the rail's width.</summary>
    public static JointProof BracketToRail(Joint joint, Part bracket, Part rail)
    {
        var (frame, outline) = (rail.FaceSide.Frame, rail.FaceSide.Outline);
        var top = bracket.FaceSide.Outline.Vertices.Select(v => frame.ToLocal(bracket.FaceSide.Frame.ToWorld(v.At))).OrderBy(p => outline.DistanceTo(p.Face)).Take(2).ToList();
        var under = top.Min(p => p.Face.Y) <= outline.Bounds.MaxY && top.TrueForAll(p => !outline.Holds(p.Face + new Vector2(0, -1)));
        // It must lie under some of the rail's width.
        var shared = Math.Min(0, top[0].W) - Math.Max(-rail.FaceSide.Thickness, top[0].W - bracket.FaceSide.Thickness);
        var gap = under && shared > 1 ? top.Max(p => outline.DistanceTo(p.Face)) : double.PositiveInfinity;
        return new(joint.Id, "screwed up into the rail", bracket.Id, rail.Id, gap, 0, 0, "", gap <= Tolerance.Joint);
    }

    /// <summary>A newel's head in the recess of its cap.</summary>
    public static JointProof CapOnNewel(Joint joint, Part newel, Part cap)
    {
        var recess = cap.Cuts.First(c => c.Joint == joint.Id);
        var frame = cap.Faces[recess.Face].Frame;
        var box = recess.Shape.Bounds;
        var head = newel.FaceSide.Frame.Origin.Z + newel.FaceSide.Outline.Bounds.MaxY;
        var ring = newel.Kind == PartKind.Newel ? ClashProof.RingOf(newel) : [.. UprightBody.Of(newel).Plan];
        var seen = ring.Select(p => frame.ToLocal(new(p.X, p.Y, head))).ToList();
        var reached = seen.Max(p => p.Face.Y);
        var gap = new[]
        {
            Math.Abs(seen.Min(p => p.Face.X) - box.MinX), Math.Abs(seen.Max(p => p.Face.X) - box.MaxX), Math.Abs(reached - box.MaxY),
            Math.Abs(seen.Max(p => p.W) + recess.Beneath), Math.Abs(seen.Min(p => p.W) + recess.Depth),
        }.Max();
        return new(joint.Id, "let into its cap", newel.Id, cap.Id, gap, box.Height, reached, "", gap <= Tolerance.Joint);
    }
}
