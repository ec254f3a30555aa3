using System.Runtime.InteropServices;
using SharpGLTF.Schema2;

namespace Rodwright.Drawings.Formats.Gltf;

/// <summary>Indices of the corners of triangles or lines for all meshes, one behind the other.</summary>
internal sealed class Indices
{
    private readonly List<uint> numbers = [];
    private BufferView? view;

    /// <summary>Takes the indices of one primitive in; the first of them.</summary>
    public Floats.Stretch Add(IEnumerable<int> more)
    {
        var first = numbers.Count;
        numbers.AddRange(more.Select(i => (uint)i));
        return new(first, numbers.Count - first);
    }

    /// <summary>Gives a primitive its indices. Nothing can be taken in afterwards.</summary>
    public void Give(MeshPrimitive primitive, Floats.Stretch stretch)
    {
        var model = primitive.LogicalParent.LogicalParent;
        view ??= model.UseBufferView(
            MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(numbers)).ToArray(), 0, numbers.Count * sizeof(uint), 0, BufferMode.ELEMENT_ARRAY_BUFFER);
        var accessor = model.CreateAccessor();
        accessor.SetIndexData(view, stretch.First * sizeof(uint), stretch.Count, IndexEncodingType.UNSIGNED_INT);
        primitive.SetIndexAccessor(accessor);
    }
}
