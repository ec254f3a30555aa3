using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>Whether two strings or newels that cross in plan do so one above the other.</summary>
internal static class CarrierHeights
{
    /// <summary>True when they share no height over the part of the plan that both fill.</summary>
    /// <param name="a">One carrier.</param>
    /// <param name="b">The other.</param>
    /// <param name="shared">That part, in the frame of the first one's face: along it, and behind it as negative y.</param>
    public static bool Pass(Part a, Part b, IReadOnlyList<Point2> shared)
    {
        if (shared.Count < 3) return true;
        var (own, other) = (a.FaceSide.Frame, b.FaceSide.Frame);
        if (Math.Abs(own.U.Cross(other.U).Length) < 1e-9) return Apart(a, b);
        var across = shared.Select(p => other.ToLocal(own.ToWorld(new(p.X, 0), p.Y)).Face.X).ToList();
        var (lowA, highA) = Heights(a, shared.Min(p => p.X), shared.Max(p => p.X));
        var (lowB, highB) = Heights(b, across.Min(), across.Max());
        return highA <= lowB + Tolerance.Joint || highB <= lowA + Tolerance.Joint;
    }

    /// <summary>Boards in one plane, or side by side in parallel ones: their outlines must not cover one another.</summary>
    private static bool Apart(Part a, Part b)
    {
        var (own, other) = (a.FaceSide.Frame, b.FaceSide.Frame);
        var first = Path2.Polygon(a.FaceSide.Outline.Flattened(0.02));
        var second = Path2.Polygon(b.FaceSide.Outline.Flattened(0.02).Select(p => own.ToLocal(other.ToWorld(p)).Face));
        if (!first.Bounds.Overlaps(second.Bounds, 1e-4)) return true;
        return Math.Abs(first.Area) - Region.Difference(first, second).Sum(r => Math.Abs(r.Area)) <= 1;
    }

    /// <summary>Lowest and highest point of a string or newel over a part of the plan that it crosses.</summary>
    public static (double Low, double High) Over(Part part, IEnumerable<Point2> ring)
    {
        var stations = ring.Select(p => part.FaceSide.Frame.ToLocal(new(p.X, p.Y, 0)).Face.X).ToList();
        return Heights(part, stations.Min(), stations.Max());
    }

    /// <summary>Lowest and highest point of an outline between two stations along its face.</summary>
    private static (double Low, double High) Heights(Part part, double from, double to)
    {
        var z = part.FaceSide.Frame.Origin.Z;
        var points = part.FaceSide.Outline.Flattened(0.02).ToList();
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < points.Count; i++)
        {
            var (p, q) = (points[i], points[(i + 1) % points.Count]);
            if (p.X > q.X) (p, q) = (q, p);
            if (q.X < from || p.X > to) continue;
            foreach (var x in new[] { Math.Max(p.X, from), Math.Min(q.X, to) })
            {
                foreach (var y in q.X - p.X < Tolerance.Same ? [p.Y, q.Y] : new[] { p.Y + (x - p.X) / (q.X - p.X) * (q.Y - p.Y) })
                    (low, high) = (Math.Min(low, y), Math.Max(high, y));
            }
        }
        return (low + z, high + z);
    }
}
