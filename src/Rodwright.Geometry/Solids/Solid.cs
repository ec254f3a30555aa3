using System.Collections.Immutable;

namespace Rodwright.Geometry.Solids;

/// <summary>A closed body of flat faces that share their vertices. Arcs have become chords when it was made.</summary>
public sealed class Solid
{
    /// <summary>A solid of faces over vertices; nothing is checked, see <see cref="IsWatertight"/>.</summary>
    public Solid(ImmutableArray<Point3> vertices, ImmutableArray<SolidFace> faces)
    {
        Vertices = vertices;
        Faces = faces;
    }

    /// <summary>Corners, each once.</summary>
    public ImmutableArray<Point3> Vertices { get; }

    /// <summary>Faces; no two that lie in one plane touch along an edge.</summary>
    public ImmutableArray<SolidFace> Faces { get; }

    /// <summary>The smallest box round it, square to the frame it is in.</summary>
    public Box3 Bounds => Box3.Of(Vertices);

    /// <summary>Volume, mm³.</summary>
    public double Volume
    {
        get
        {
            if (Vertices.IsEmpty) return 0;
            var (six, origin) = (0.0, Vertices[0]);
            foreach (var loop in Faces.SelectMany(f => f.Loops))
            {
                var a = Vertices[loop[0]] - origin;
                for (var i = 1; i + 1 < loop.Length; i++) six += a.Dot((Vertices[loop[i]] - origin).Cross(Vertices[loop[i + 1]] - origin));
            }
            return six / 6;
        }
    }

    /// <summary>Whether every edge belongs to exactly two faces, which run along it opposite ways.</summary>
    public bool IsWatertight
    {
        get
        {
            var edges = new HashSet<(int, int)>();
            foreach (var loop in Faces.SelectMany(f => f.Loops))
                for (var i = 0; i < loop.Length; i++)
                    if (!edges.Add((loop[i], loop[(i + 1) % loop.Length]))) return false;
            return edges.Count > 0 && edges.All(e => edges.Contains((e.Item2, e.Item1)));
        }
    }

    /// <summary>The faces cut into triangles over the same vertices: three indices each, anticlockwise as seen from outside.</summary>
    public ImmutableArray<int> Triangles()
    {
        var triangles = ImmutableArray.CreateBuilder<int>(Vertices.Length * 6);
        foreach (var face in Faces) FaceTriangles.Add(this, face, triangles);
        return triangles.ToImmutable();
    }

    /// <summary>This solid, drawn in a frame, as it stands in the world.</summary>
    public Solid Placed(Frame3 frame) => new(
        [.. Vertices.Select(p => frame.ToWorld(new(p.X, p.Y), p.Z))],
        [.. Faces.Select(f => f with { Normal = f.Normal.X * frame.U + f.Normal.Y * frame.V + f.Normal.Z * frame.W })]);
}
