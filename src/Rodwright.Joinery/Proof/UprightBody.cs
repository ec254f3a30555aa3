using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>
/// A part whose face side stands upright, as it lies in the world: an outline in a vertical plane, carried level through its thickness. Tenons are left out: they are their joints' matter. Cuts are not looked at, so
/// that a body may only be larger than its part.
/// </summary>
internal sealed class UprightBody
{
    private const double LeastArea = 0.05; // square mm

    private UprightBody(Part part, Frame3 frame, List<Point2> ring, double thickness)
    {
        Part = part;
        Frame = frame;
        Ring = ring;
        Thickness = thickness;
        Box = Box2.Of(ring);
        // A face that looks up tells what the piece covers: a level board, or the top edge of one with bevelled ends.
        var told = part.Kind is PartKind.LandingNosing or PartKind.Apron ? part.Faces.FirstOrDefault(f => f.Frame.W.Z > 0.5) : null;
        IsToldInPlan = told is not null;
        Plan = told is not null ? [.. told.Outline.Flattened().Select(p => told.Frame.ToWorld(p).Plan)]
            : [.. new[] { (Box.MinX, 0.0), (Box.MaxX, 0.0), (Box.MaxX, -thickness), (Box.MinX, -thickness) }.Select(p => frame.ToWorld(new(p.Item1, 0), p.Item2).Plan)];
        if (new Path2(Plan.Select(p => new Vertex2(p)), true).Area < 0) Plan.Reverse();
        PlanBox = Box2.Of(Plan);
        (Low, High) = (frame.Origin.Z + Box.MinY, frame.Origin.Z + Box.MaxY);
        IsConvex = ConvexClip.IsConvex(ring);
    }

    public Part Part { get; }

    public Frame3 Frame { get; }

    /// <summary>The outline in the frame, anticlockwise.</summary>
    public List<Point2> Ring { get; }

    public Box2 Box { get; }

    public double Thickness { get; }

    /// <summary>Corners of what it covers in plan, convex, anticlockwise.</summary>
    public List<Point2> Plan { get; }

    public Box2 PlanBox { get; }

    public double Low { get; }

    public double High { get; }

    private bool IsConvex { get; }

    private bool IsToldInPlan { get; }

    /// <summary>The body of a part with an upright face side.</summary>
    public static UprightBody Of(Part part)
    {
        var face = part.FaceSide.Frame.W.Z > 0.5 ? FrontEdge(part.FaceSide) : part.FaceSide;
        List<Point2> ring = [.. face.Outline.Flattened()];
        var (min, max) = (face.Outline.Bounds.MinX, face.Outline.Bounds.MaxX);
        foreach (var cheek in part.Cuts.Where(c => c.Kind is CutKind.TenonCheek or CutKind.Cheek).Select(c => c.Shape.Bounds))
        {
            if (Math.Abs(cheek.MinX - min) < Tolerance.Joint) ring = ConvexClip.LeftOf(ring, new(new(cheek.MaxX, 0), new(0, -1)));
            if (Math.Abs(cheek.MaxX - max) < Tolerance.Joint) ring = ConvexClip.LeftOf(ring, new(new(cheek.MinX, 0), new(0, 1)));
        }
        return new(part, face.Frame, ring, face.Thickness);
    }

    /// <summary>The front edge of a level board that lies behind the line v = least of its top.</summary>
    private static PartFace FrontEdge(PartFace top)
    {
        var box = top.Outline.Bounds;
        return new("front edge", new(top.Frame.ToWorld(new(0, box.MinY)), top.Frame.U, Vector3.Up), Path2.Rectangle(box.MinX, -top.Thickness, box.MaxX, 0), box.Height);
    }

    /// <summary>How much of one place two bodies fill, square mm in a plane; 0 where they keep apart.</summary>
    public static double Shared(UprightBody a, UprightBody b)
    {
        if (Math.Min(a.High, b.High) - Math.Max(a.Low, b.Low) <= Tolerance.Joint || !a.PlanBox.Overlaps(b.PlanBox, Tolerance.Joint)) return 0;
        var isParallel = Math.Abs(a.Frame.U.Cross(b.Frame.U).Length) < 1e-9;
        if (!isParallel || a.IsToldInPlan || b.IsToldInPlan) return a.Crossing(b);
        var w = a.Frame.ToLocal(b.Frame.Origin).W;
        var near = b.Frame.W.Dot(a.Frame.W) > 0 ? (From: w - b.Thickness, To: w) : (From: w, To: w + b.Thickness);
        if (Math.Min(0, near.To) - Math.Max(-a.Thickness, near.From) <= Tolerance.Joint) return 0;
        List<Point2> other = [.. b.Ring.Select(p => a.Frame.ToLocal(b.Frame.ToWorld(p)).Face)];
        if (b.Frame.W.Dot(a.Frame.W) < 0) other.Reverse();
        if (!Box2.Of(other).Overlaps(a.Box, Tolerance.Joint)) return 0;
        var area = b.IsConvex ? ConvexClip.Area(ConvexClip.Inside(a.Ring, other))
            : a.IsConvex ? ConvexClip.Area(ConvexClip.Inside(other, a.Ring))
            : Path2.Polygon(a.Ring).Area - Region.Difference(Path2.Polygon(a.Ring), Path2.Polygon(other)).Sum(r => r.Area);
        return Math.Abs(area) <= LeastArea ? 0 : Math.Abs(area);
    }

    /// <summary>How much of one place it and a level piece of a step fill, square mm in plan.</summary>
    public double Shared(Prism prism)
    {
        if (Math.Min(High, prism.Top) - Math.Max(Low, prism.Bottom) <= Tolerance.Joint || !PlanBox.Overlaps(prism.Box, Tolerance.Joint)) return 0;
        var inside = ConvexClip.Inside(prism.Plan, Plan);
        var area = inside.Count < 3 ? 0 : ConvexClip.Area(inside);
        if (area <= LeastArea) return 0;
        var (low, high) = Heights(inside);
        return Math.Min(high, prism.Top) - Math.Max(low, prism.Bottom) <= Tolerance.Joint ? 0 : area;
    }

    /// <summary>Bodies in planes that cross: the part of the plan that both cover, where they share any height over it.</summary>
    private double Crossing(UprightBody b)
    {
        var inside = ConvexClip.Inside(b.Plan, Plan);
        var area = inside.Count < 3 ? 0 : ConvexClip.Area(inside);
        if (area <= LeastArea) return 0;
        var (own, other) = (Heights(inside), b.Heights(inside));
        return Math.Min(own.High, other.High) - Math.Max(own.Low, other.Low) <= Tolerance.Joint ? 0 : area;
    }

    /// <summary>Its lowest and highest point over a piece of the plan, in the world.</summary>
    private (double Low, double High) Heights(List<Point2> plan)
    {
        var along = plan.Select(p => Frame.ToLocal(new(p.X, p.Y, 0)).Face.X).ToList();
        var (from, to) = (along.Min(), along.Max());
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int i = Ring.Count - 1, j = 0; j < Ring.Count; i = j++)
        {
            var (p, q) = Ring[i].X <= Ring[j].X ? (Ring[i], Ring[j]) : (Ring[j], Ring[i]);
            if (q.X < from || p.X > to) continue;
            foreach (var x in new[] { Math.Max(p.X, from), Math.Min(q.X, to) })
            {
                if (q.X - p.X < Tolerance.Same) (low, high) = (Math.Min(low, p.Y), Math.Max(high, q.Y));
                var y = q.X - p.X < Tolerance.Same ? p.Y : p.Y + (x - p.X) / (q.X - p.X) * (q.Y - p.Y);
                (low, high) = (Math.Min(low, y), Math.Max(high, y));
            }
        }
        return (low + Frame.Origin.Z, high + Frame.Origin.Z);
    }
}
