using Rodwright.Geometry;
using Rodwright.Geometry.Solids;

namespace Rodwright.Rod.Tests.Scenes;

/// <summary>How deep points lie in a solid: worked out from its triangles alone.</summary>
internal sealed class Within
{
    private readonly Solid solid;
    private readonly List<(Point3 A, Point3 B, Point3 C)> triangles = [];

    public Within(Solid solid)
    {
        this.solid = solid;
        var order = solid.Triangles();
        for (var i = 0; i < order.Length; i += 3) triangles.Add((solid.Vertices[order[i]], solid.Vertices[order[i + 1]], solid.Vertices[order[i + 2]]));
    }

    /// <summary>Distance of a point to the nearest face when it lies in the solid; 0 when it does not.</summary>
    public double DepthOf(Point3 p)
    {
        var (min, max) = (solid.Bounds.Min, solid.Bounds.Max);
        if (p.X <= min.X || p.Y <= min.Y || p.Z <= min.Z || p.X >= max.X || p.Y >= max.Y || p.Z >= max.Z) return 0;
        // The angle under which the surface is seen: a full turn from within, none from outside.
        var angle = 0.0;
        foreach (var (a, b, c) in triangles)
        {
            var (u, v, w) = (a - p, b - p, c - p);
            angle += 2 * Angle.Atan2(u.Dot(v.Cross(w)), u.Length * v.Length * w.Length + u.Dot(v) * w.Length + v.Dot(w) * u.Length + w.Dot(u) * v.Length);
        }
        return angle > 2 * Math.PI ? triangles.Min(t => Distance(p, t.A, t.B, t.C)) : 0;
    }

    private static double Distance(Point3 p, Point3 a, Point3 b, Point3 c)
    {
        var n = (b - a).Cross(c - a);
        if (n.Length == 0) return double.PositiveInfinity;
        n = 1 / n.Length * n;
        var q = p + -(p - a).Dot(n) * n;
        if ((b - a).Cross(q - a).Dot(n) >= 0 && (c - b).Cross(q - b).Dot(n) >= 0 && (a - c).Cross(q - c).Dot(n) >= 0) return p.DistanceTo(q);
        return Math.Min(ToEdge(p, a, b), Math.Min(ToEdge(p, b, c), ToEdge(p, c, a)));
    }

    private static double ToEdge(Point3 p, Point3 a, Point3 b)
    {
        var d = b - a;
        return p.DistanceTo(a + Math.Clamp((p - a).Dot(d) / d.Dot(d), 0, 1) * d);
    }
}
