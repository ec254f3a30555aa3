using Rodwright.Drawings.Formats.Models;
using SharpGLTF.Schema2;

namespace Rodwright.Drawings.Formats.Gltf;

/// <summary>The meshes of a model, each shape once.</summary>
internal abstract class Meshes
{
    private readonly Dictionary<MeshShape, int> known = [];
    private readonly List<ModelPiece> firsts = [];

    /// <summary>Takes a piece's shape in; the number of its mesh.</summary>
    public int Add(ModelPiece piece)
    {
        var shape = new MeshShape(piece);
        if (known.TryGetValue(shape, out var number)) return number;
        TakeIn(piece);
        firsts.Add(piece);
        return known[shape] = firsts.Count - 1;
    }

    /// <summary>Makes the meshes in a model, in the order of their numbers. Nothing can be taken in afterwards.</summary>
    public List<Mesh> Write(ModelRoot model, Func<ModelMaterial, Material> materials)
    {
        var meshes = new List<Mesh>();
        foreach (var piece in firsts)
        {
            var mesh = model.CreateMesh(piece.Name);
            Fill(mesh, meshes.Count, materials(piece.Material));
            meshes.Add(mesh);
        }
        return meshes;
    }

    /// <summary>Keeps the numbers of a shape that was not known.</summary>
    protected abstract void TakeIn(ModelPiece piece);

    /// <summary>Gives a mesh its primitives.</summary>
    protected abstract void Fill(Mesh mesh, int number, Material material);
}
