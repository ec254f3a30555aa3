using System.Collections.Immutable;

namespace Rodwright.Geometry.Solids;

/// <summary>Joins patches that lie in one plane and touch along an edge into faces, and leaves out corners at which nothing turns.</summary>
internal sealed class FaceMerge
{
    private readonly FacePatches patches;
    private readonly int[] twins;
    private readonly int[] parent;
    private readonly double[] lengths;
    private readonly int[] faceOf; // by half-edge; -1 when it lies within a face
    private readonly int[] cornerOf; // by half-edge: the corner it starts from
    private readonly List<List<int>> loops = [];

    private FaceMerge(FacePatches patches)
    {
        this.patches = patches;
        twins = HalfEdgeTwins.Of(patches, out var touches);
        parent = [.. Enumerable.Range(0, patches.Planes.Count)];
        lengths = [.. patches.Planes.Select(p => p.At.DistanceTo(p.Far))];
        for (var h = 0; h < twins.Length; h++) if (h < twins[h]) Unite(patches.Halves[h].Patch, patches.Halves[twins[h]].Patch);
        faceOf = new int[twins.Length];
        cornerOf = new int[twins.Length];
        for (var h = 0; h < twins.Length; h++)
        {
            var face = Root(patches.Halves[h].Patch);
            faceOf[h] = face == Root(patches.Halves[twins[h]].Patch) ? -1 : face;
            cornerOf[h] = patches.Halves[h].From;
        }
        Chain();
        if (touches) PartTouching();
    }

    /// <summary>The solid that the patches close round.</summary>
    public static Solid Join(FacePatches patches) => new FaceMerge(patches).ToSolid();

    private int Root(int i)
    {
        while (parent[i] != i) i = parent[i] = parent[parent[i]];
        return i;
    }

    private void Unite(int p, int q)
    {
        (p, q) = (Root(p), Root(q));
        if (p == q) return;
        if (lengths[p] < lengths[q]) (p, q) = (q, p);
        var (a, b) = (patches.Planes[p], patches.Planes[q]);
        if (a.Normal.Dot(b.Normal) < 0.99) return;
        // Walls: the shorter one lies in the longer one's plane. Level or sloping patches have exact normals.
        if (lengths[p] == 0 && (a.Normal + -b.Normal).Length > 1e-9) return;
        // A bend as slight as the welding of corners is still a bend: a face with one in it would not be flat, and its triangles would not hold the same wood.
        if (Math.Abs(a.Normal.Dot(b.At - a.At)) > Tolerance.Same || Math.Abs(a.Normal.Dot(b.Far - a.At)) > Tolerance.Same) return;
        if (lengths[p] > 0 != lengths[q] > 0) return;
        parent[q] = p;
    }

    /// <summary>
    /// Runs the edges of each face together into loops. Which edge follows is known from the patches and their twins alone, so where a face touches itself
    /// (a bore that just reaches it, say) every loop still closes and keeps to its own wood.
    /// </summary>
    private void Chain()
    {
        var used = new bool[faceOf.Length];
        for (var start = 0; start < faceOf.Length; start++)
        {
            if (faceOf[start] < 0 || used[start]) continue;
            var loop = new List<int>();
            for (var h = start; !used[h]; h = Following(h))
            {
                used[h] = true;
                loop.Add(h);
            }
            loops.Add(loop);
        }
    }

    /// <summary>The face's next half-edge: on round the patch, and round the next patch of the face wherever the edge lies within it.</summary>
    private int Following(int h)
    {
        var next = patches.Next[h];
        while (faceOf[next] < 0) next = patches.Next[twins[next]];
        return next;
    }

    /// <summary>Where two bodies touch along a line or at a point, each has its own corner there: corners are one only round one fan of faces.</summary>
    private void PartTouching()
    {
        var after = new int[faceOf.Length];
        foreach (var loop in loops) for (var i = 0; i < loop.Count; i++) after[loop[i]] = loop[(i + 1) % loop.Count];
        var fan = Enumerable.Repeat(-1, faceOf.Length).ToArray();
        var taken = new HashSet<int>();
        for (var start = 0; start < fan.Length; start++)
        {
            if (faceOf[start] < 0 || fan[start] >= 0) continue;
            var corner = patches.Halves[start].From;
            if (!taken.Add(corner))
            {
                patches.Points.Add(patches.Points[corner]);
                corner = patches.Points.Count - 1;
            }
            for (var h = start; fan[h] < 0; h = after[twins[h]]) fan[h] = corner;
        }
        for (var h = 0; h < fan.Length; h++) if (fan[h] >= 0) cornerOf[h] = fan[h];
    }

    private Solid ToSolid()
    {
        var degree = new int[patches.Points.Count];
        for (var h = 0; h < faceOf.Length; h++) if (faceOf[h] >= 0) degree[cornerOf[h]]++;
        var number = new int[patches.Points.Count];
        var points = ImmutableArray.CreateBuilder<Point3>();
        var faces = ImmutableArray.CreateBuilder<SolidFace>();
        foreach (var group in loops.GroupBy(l => faceOf[l[0]]))
        {
            var normal = patches.Planes[group.Key].Normal;
            var rings = group.Select(l => (Ring: Turning(l, degree), Area: AreaOf(l, normal))).OrderByDescending(r => r.Area).ToList();
            var outer = Numbered(rings[0].Ring);
            faces.Add(new(normal, outer, [.. rings.Skip(1).Select(r => Numbered(r.Ring))]));
        }
        return new(points.ToImmutable(), faces.ToImmutable());

        ImmutableArray<int> Numbered(List<int> ring)
        {
            var result = ImmutableArray.CreateBuilder<int>(ring.Count);
            foreach (var corner in ring)
            {
                if (number[corner] == 0)
                {
                    points.Add(patches.Points[corner]);
                    number[corner] = points.Count;
                }
                result.Add(number[corner] - 1);
            }
            return result.MoveToImmutable();
        }
    }

    private double AreaOf(List<int> loop, Vector3 normal)
    {
        var (sum, origin) = (0.0, patches.Points[cornerOf[loop[0]]]);
        foreach (var h in loop) sum += normal.Dot((patches.Points[patches.Halves[h].From] - origin).Cross(patches.Points[patches.Halves[h].To] - origin));
        return sum / 2;
    }

    /// <summary>The corners of a loop without those at which only two edges meet, in line.</summary>
    private List<int> Turning(List<int> loop, int[] degree)
    {
        var kept = new List<int>(loop.Count);
        for (var i = 0; i < loop.Count; i++)
        {
            var here = cornerOf[loop[i]];
            if (degree[here] == 2)
            {
                var a = patches.Points[here] - patches.Points[cornerOf[loop[i == 0 ? ^1 : i - 1]]];
                var b = patches.Points[cornerOf[loop[(i + 1) % loop.Count]]] - patches.Points[here];
                if (a.Dot(b) > 0 && a.Cross(b).Length <= Tolerance.Weld * Math.Max(a.Length, b.Length)) continue;
            }
            kept.Add(here);
        }
        return kept;
    }
}
