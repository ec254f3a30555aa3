using System.Numerics;
using System.Text.Json.Nodes;
using Rodwright.Geometry;
using SharpGLTF.Schema2;

namespace Rodwright.Drawings.Formats.Gltf;

/// <summary>
/// Writes pieces as a binary glTF 2.0 file, the open format of three-dimensional models for browsers: one named node a piece under one root, which alone turns
/// millimetres with z up into the format's metres with y up. Equal pieces share a mesh.
/// </summary>
public static class GlbWriter
{
    /// <summary>The file's bytes, the same for the same pieces. Pieces without wood are left out.</summary>
    /// <param name="title">Name of the root node.</param>
    /// <param name="pieces">In the order of the nodes.</param>
    public static byte[] Write(string title, IReadOnlyList<GlbPiece> pieces)
    {
        var model = ModelRoot.CreateModel();
        model.Asset.Generator = "Rodwright";
        var solids = pieces.Where(p => !p.Shape.Faces.IsEmpty).ToList();
        var materials = new Dictionary<GlbMaterial, Material>();
        var known = new Dictionary<MeshShape, int>();
        var buffers = new MeshBuffers();
        var looks = new List<(string, Material)>();
        var numbers = new List<int>();
        foreach (var piece in solids)
        {
            var shape = new MeshShape(piece.Shape, piece.Material);
            if (!known.TryGetValue(shape, out var number))
            {
                known[shape] = number = buffers.Add(piece.Shape);
                looks.Add((piece.Name, MaterialOf(piece.Material)));
            }
            numbers.Add(number);
        }
        var meshes = buffers.Write(model, looks);
        var root = model.UseScene(0).CreateNode(title);
        // x stays, y runs away from the viewer (-z), z becomes y; all in metres.
        root.LocalMatrix = new(0.001f, 0, 0, 0, 0, 0, -0.001f, 0, 0, 0.001f, 0, 0, 0, 0, 0, 1);
        for (var i = 0; i < solids.Count; i++)
        {
            var node = root.CreateNode(solids[i].Name);
            node.LocalMatrix = MatrixOf(solids[i].Frame);
            node.Mesh = meshes[numbers[i]];
            node.Extras = new JsonObject { ["part"] = solids[i].PartId, ["mark"] = solids[i].Mark };
        }
        model.MergeBuffers();
        return [.. model.WriteGLB()];

        Material MaterialOf(GlbMaterial look)
        {
            if (materials.TryGetValue(look, out var material)) return material;
            material = model.CreateMaterial(look.Name);
            material.InitializePBRMetallicRoughness();
            var colour = material.FindChannel("BaseColor")!.Value;
            colour.Color = new((float)look.Red, (float)look.Green, (float)look.Blue, 1);
            var dull = material.FindChannel("MetallicRoughness")!.Value;
            dull.SetFactor("MetallicFactor", 0);
            dull.SetFactor("RoughnessFactor", 0.9f);
            return materials[look] = material;
        }
    }

    private static Matrix4x4 MatrixOf(Frame3 f) => new(
        (float)f.U.X, (float)f.U.Y, (float)f.U.Z, 0,
        (float)f.V.X, (float)f.V.Y, (float)f.V.Z, 0,
        (float)f.W.X, (float)f.W.Y, (float)f.W.Z, 0,
        (float)f.Origin.X, (float)f.Origin.Y, (float)f.Origin.Z, 1);
}
