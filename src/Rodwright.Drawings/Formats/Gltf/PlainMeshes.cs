using Rodwright.Drawings.Formats.Models;
using SharpGLTF.Schema2;

namespace Rodwright.Drawings.Formats.Gltf;

/// <summary>
/// Corners and triangles, nothing else. Normals are left out on purpose: the format then has every viewer shade each triangle flat, which is what sawn faces are, and
/// corners stay shared.
/// </summary>
internal sealed class PlainMeshes : Meshes
{
    private readonly Floats corners = new();
    private readonly Indices indices = new();
    private readonly List<(Floats.Stretch Corners, Floats.Stretch Triangles)> taken = [];

    protected override void TakeIn(ModelPiece piece) => taken.Add((corners.Add(piece.Shape.Vertices), indices.Add(piece.Shape.Triangles())));

    protected override void Fill(Mesh mesh, int number, Material material)
    {
        var primitive = mesh.CreatePrimitive();
        corners.Give(primitive, "POSITION", taken[number].Corners);
        indices.Give(primitive, taken[number].Triangles);
        primitive.Material = material;
    }
}
