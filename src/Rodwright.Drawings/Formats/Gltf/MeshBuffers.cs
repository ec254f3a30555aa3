using System.Buffers.Binary;
using Rodwright.Geometry.Solids;
using SharpGLTF.Memory;
using SharpGLTF.Schema2;

namespace Rodwright.Drawings.Formats.Gltf;

/// <summary>
/// Corners and triangles of all meshes, one behind the other in one buffer each. Normals are left out on purpose: the format then has every viewer shade each
/// triangle flat, which is what sawn faces are, and corners stay shared.
/// </summary>
internal sealed class MeshBuffers
{
    private const int CornerSize = 12;

    private readonly List<Slice> slices = [];
    private int corners;
    private int indices;

    private sealed record Slice(Solid Solid, int[] Triangles, int FirstCorner, int FirstIndex);

    /// <summary>Takes a solid in; its number.</summary>
    public int Add(Solid solid)
    {
        var triangles = solid.Triangles();
        slices.Add(new(solid, [.. triangles], corners, indices));
        corners += solid.Vertices.Length;
        indices += triangles.Length;
        return slices.Count - 1;
    }

    /// <summary>Writes the buffers into a model and makes the meshes, in the order they were taken in.</summary>
    public List<Mesh> Write(ModelRoot model, IReadOnlyList<(string Name, Material Material)> looks)
    {
        if (slices.Count == 0) return [];
        var (points, triangles) = (new byte[corners * CornerSize], new byte[indices * sizeof(uint)]);
        foreach (var slice in slices)
        {
            var at = points.AsSpan(slice.FirstCorner * CornerSize);
            for (var i = 0; i < slice.Solid.Vertices.Length; i++)
            {
                var p = slice.Solid.Vertices[i];
                BinaryPrimitives.WriteSingleLittleEndian(at[(i * CornerSize)..], (float)p.X);
                BinaryPrimitives.WriteSingleLittleEndian(at[(i * CornerSize + 4)..], (float)p.Y);
                BinaryPrimitives.WriteSingleLittleEndian(at[(i * CornerSize + 8)..], (float)p.Z);
            }
            var run = triangles.AsSpan(slice.FirstIndex * sizeof(uint));
            for (var i = 0; i < slice.Triangles.Length; i++) BinaryPrimitives.WriteUInt32LittleEndian(run[(i * sizeof(uint))..], (uint)slice.Triangles[i]);
        }
        var pointView = model.UseBufferView(points, 0, points.Length, CornerSize, BufferMode.ARRAY_BUFFER);
        var triangleView = model.UseBufferView(triangles, 0, triangles.Length, 0, BufferMode.ELEMENT_ARRAY_BUFFER);
        var meshes = new List<Mesh>();
        for (var k = 0; k < slices.Count; k++)
        {
            var slice = slices[k];
            var place = model.CreateAccessor();
            place.SetVertexData(pointView, slice.FirstCorner * CornerSize, slice.Solid.Vertices.Length, new AttributeFormat(DimensionType.VEC3));
            var order = model.CreateAccessor();
            order.SetIndexData(triangleView, slice.FirstIndex * sizeof(uint), slice.Triangles.Length, IndexEncodingType.UNSIGNED_INT);
            var mesh = model.CreateMesh(looks[k].Name);
            var primitive = mesh.CreatePrimitive();
            primitive.SetVertexAccessor("POSITION", place);
            primitive.SetIndexAccessor(order);
            primitive.Material = looks[k].Material;
            meshes.Add(mesh);
        }
        return meshes;
    }
}
