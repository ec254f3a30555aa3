using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Wells;

/// <summary>What of the stair stands in the way of a lining along an edge of the well.</summary>
internal static class EdgeObstacles
{
    /// <summary>Stretches of an edge that parts take up between two distances from it and two heights, each with the part's id.</summary>
    public static IEnumerable<(double From, double To, Part Part)> Of(Line2 edge, IEnumerable<Part> parts, (double Near, double Far) across, (double Low, double High) heights)
    {
        foreach (var part in parts)
        {
            if (Plan(part, heights, edge.Along, across.Far - across.Near) is not { Count: >= 3 } plan) continue;
            plan = ConvexClip.LeftOf(plan, edge.OffsetLeft(across.Near + Tolerance.Joint));
            if (plan.Count >= 3) plan = ConvexClip.LeftOf(plan, new(edge.OffsetLeft(across.Far - Tolerance.Joint).Through, -edge.Along));
            if (plan.Count < 3) continue;
            var stations = plan.Select(edge.Station).ToList();
            if (stations.Max() - stations.Min() > Tolerance.Joint) yield return (stations.Min(), stations.Max(), part);
        }
    }

    /// <summary>What a part covers in plan between two heights; null where it does not reach them.</summary>
    private static List<Point2>? Plan(Part part, (double Low, double High) heights, Vector2 along, double wide)
    {
        var face = part.FaceSide;
        var (frame, thick) = (face.Frame, face.Thickness);
        if (Math.Abs(frame.W.Z) > 0.5)
        {
            var (a, b) = (frame.Origin.Z, frame.ToWorld(Point2.Origin, -thick).Z);
            if (Math.Max(a, b) <= heights.Low + Tolerance.Joint || Math.Min(a, b) >= heights.High - Tolerance.Joint) return null;
            return Anticlockwise([.. face.Outline.Flattened().Select(p => frame.ToWorld(p).Plan)]);
        }
        var ring = ConvexClip.LeftOf(face.Outline.Flattened(), new(new(0, heights.Low - frame.Origin.Z + Tolerance.Joint), new(1, 0)));
        if (ring.Count >= 3) ring = ConvexClip.LeftOf(ring, new(new(0, heights.High - frame.Origin.Z - Tolerance.Joint), new(-1, 0)));
        if (ring.Count < 3) return null;
        // Beside an edge that is not square to the piece, as far along the piece as the lining is wide on the slant: a sloping string is higher there.
        var (way, off) = (Math.Abs(frame.U.X * along.X + frame.U.Y * along.Y), Math.Abs(frame.U.X * along.Y - frame.U.Y * along.X));
        var slant = Math.Min(way, off) * (wide + thick);
        var box = face.Outline.Bounds;
        var (from, to) = (Math.Max(box.MinX, ring.Min(p => p.X) - slant), Math.Min(box.MaxX, ring.Max(p => p.X) + slant));
        return Anticlockwise([.. new[] { (from, 0.0), (to, 0.0), (to, -thick), (from, -thick) }.Select(p => frame.ToWorld(new(p.Item1, 0), p.Item2).Plan)]);
    }

    private static List<Point2> Anticlockwise(List<Point2> ring)
    {
        if (Path2.Polygon([.. ring]).Area < 0) ring.Reverse();
        return ring;
    }
}
