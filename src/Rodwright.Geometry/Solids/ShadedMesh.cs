using System.Collections.Immutable;

namespace Rodwright.Geometry.Solids;

/// <summary>
/// A solid as triangles to be shaded: each face has its own corners, so that arrises stay sharp, and along a round the normals of neighbouring faces run into one another.
/// </summary>
/// <param name="Corners">Where each corner lies, mm.</param>
/// <param name="Normals">Unit normal at each corner, out of the wood.</param>
/// <param name="Triangles">Three corners each, anticlockwise as seen from outside.</param>
public sealed record ShadedMesh(ImmutableArray<Point3> Corners, ImmutableArray<Vector3> Normals, ImmutableArray<int> Triangles)
{
    /// <summary>The mesh of a closed solid.</summary>
    public static ShadedMesh Of(Solid solid)
    {
        var areas = solid.Faces.Select(f => AreaOf(solid, f)).ToArray();
        var around = Around(solid);
        var (corners, normals) = (ImmutableArray.CreateBuilder<Point3>(), ImmutableArray.CreateBuilder<Vector3>());
        var triangles = ImmutableArray.CreateBuilder<int>();
        var (cornerOf, seenIn) = (new int[solid.Vertices.Length], new int[solid.Vertices.Length]);
        for (var f = 0; f < solid.Faces.Length; f++)
        {
            var face = solid.Faces[f];
            foreach (var loop in face.Loops)
            {
                foreach (var vertex in loop)
                {
                    if (seenIn[vertex] == f + 1) continue;
                    seenIn[vertex] = f + 1;
                    cornerOf[vertex] = corners.Count;
                    corners.Add(solid.Vertices[vertex]);
                    normals.Add(NormalAt(solid, face, around[vertex], areas));
                }
            }
            var first = triangles.Count;
            FaceTriangles.Add(solid, face, triangles);
            for (var i = first; i < triangles.Count; i++) triangles[i] = cornerOf[triangles[i]];
        }
        return new(corners.ToImmutable(), normals.ToImmutable(), triangles.ToImmutable());
    }

    /// <summary>The faces round each vertex, each once.</summary>
    private static List<int>[] Around(Solid solid)
    {
        var around = new List<int>[solid.Vertices.Length];
        for (var f = 0; f < solid.Faces.Length; f++)
        {
            foreach (var loop in solid.Faces[f].Loops)
            {
                foreach (var vertex in loop)
                {
                    var faces = around[vertex] ??= new(4);
                    if (faces.Count == 0 || faces[^1] != f) faces.Add(f);
                }
            }
        }
        return around;
    }

    /// <summary>Faces count by their area, so that a flat board keeps its own normal up to the round at its edge.</summary>
    private static Vector3 NormalAt(Solid solid, SolidFace face, List<int> around, double[] areas)
    {
        var sum = new Vector3(0, 0, 0);
        foreach (var f in around) if (Crease.IsSmooth(solid.Faces[f], face)) sum += areas[f] * solid.Faces[f].Normal;
        return sum.Length > 0 ? 1 / sum.Length * sum : face.Normal;
    }

    private static double AreaOf(Solid solid, SolidFace face)
    {
        var (twice, origin) = (0.0, solid.Vertices[face.Outer[0]]);
        foreach (var loop in face.Loops)
            for (int i = loop.Length - 1, j = 0; j < loop.Length; i = j++)
                twice += face.Normal.Dot((solid.Vertices[loop[i]] - origin).Cross(solid.Vertices[loop[j]] - origin));
        return Math.Abs(twice) / 2;
    }
}
