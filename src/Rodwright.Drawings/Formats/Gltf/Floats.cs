using System.Runtime.InteropServices;
using Rodwright.Geometry;
using SharpGLTF.Memory;
using SharpGLTF.Schema2;

namespace Rodwright.Drawings.Formats.Gltf;

/// <summary>Vertex attributes of one kind for all meshes, one behind the other.</summary>
/// <param name="dimensions">SCALAR or VEC3.</param>
internal sealed class Floats(DimensionType dimensions)
{
    private readonly int width = dimensions == DimensionType.SCALAR ? 1 : 3;
    private readonly List<float> numbers = [];
    private BufferView? view;

    /// <summary>A stretch of the numbers that belongs to one mesh, counted in items.</summary>
    public readonly record struct Stretch(int First, int Count);

    /// <summary>Takes points in.</summary>
    public Stretch Add(IEnumerable<Point3> points)
    {
        var first = numbers.Count;
        foreach (var p in points) Three(p.X, p.Y, p.Z);
        return From(first);
    }

    /// <summary>Takes directions in.</summary>
    public Stretch Add(IEnumerable<Vector3> vectors)
    {
        var first = numbers.Count;
        foreach (var v in vectors) Three(v.X, v.Y, v.Z);
        return From(first);
    }

    /// <summary>Takes single numbers in.</summary>
    public Stretch Add(IEnumerable<float> more)
    {
        var first = numbers.Count;
        numbers.AddRange(more);
        return From(first);
    }

    /// <summary>Gives a primitive a stretch as one of its attributes. Nothing can be taken in afterwards.</summary>
    public void Give(MeshPrimitive primitive, string attribute, Stretch stretch)
    {
        var size = width * sizeof(float);
        view ??= primitive.LogicalParent.LogicalParent.UseBufferView(
            MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(numbers)).ToArray(), 0, numbers.Count * sizeof(float), size, BufferMode.ARRAY_BUFFER);
        var accessor = view.LogicalParent.CreateAccessor();
        accessor.SetVertexData(view, stretch.First * size, stretch.Count, new AttributeFormat(dimensions));
        primitive.SetVertexAccessor(attribute, accessor);
    }

    private void Three(double x, double y, double z)
    {
        numbers.Add((float)x);
        numbers.Add((float)y);
        numbers.Add((float)z);
    }

    private Stretch From(int first) => new(first / width, (numbers.Count - first) / width);
}
