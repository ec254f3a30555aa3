using System.Runtime.InteropServices;
using Rodwright.Geometry;
using SharpGLTF.Memory;
using SharpGLTF.Schema2;

namespace Rodwright.Drawings.Formats.Gltf;

/// <summary>Points or directions of all meshes, one behind the other: a vertex attribute.</summary>
internal sealed class Floats
{
    private const int Size = 3 * sizeof(float);

    private readonly List<float> numbers = [];
    private BufferView? view;

    /// <summary>A stretch that belongs to one mesh, counted in items.</summary>
    public readonly record struct Stretch(int First, int Count);

    /// <summary>Takes points in.</summary>
    public Stretch Add(IEnumerable<Point3> points)
    {
        var first = numbers.Count;
        foreach (var p in points) Three(p.X, p.Y, p.Z);
        return new(first / 3, (numbers.Count - first) / 3);
    }

    /// <summary>Takes directions in.</summary>
    public Stretch Add(IEnumerable<Vector3> vectors)
    {
        var first = numbers.Count;
        foreach (var v in vectors) Three(v.X, v.Y, v.Z);
        return new(first / 3, (numbers.Count - first) / 3);
    }

    /// <summary>Gives a primitive a stretch as one of its attributes. Nothing can be taken in afterwards.</summary>
    public void Give(MeshPrimitive primitive, string attribute, Stretch stretch)
    {
        var model = primitive.LogicalParent.LogicalParent;
        view ??= model.UseBufferView(MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(numbers)).ToArray(), 0, numbers.Count * sizeof(float), Size, BufferMode.ARRAY_BUFFER);
        var accessor = model.CreateAccessor();
        accessor.SetVertexData(view, stretch.First * Size, stretch.Count, new AttributeFormat(DimensionType.VEC3));
        primitive.SetVertexAccessor(attribute, accessor);
    }

    private void Three(double x, double y, double z)
    {
        numbers.Add((float)x);
        numbers.Add((float)y);
        numbers.Add((float)z);
    }
}
