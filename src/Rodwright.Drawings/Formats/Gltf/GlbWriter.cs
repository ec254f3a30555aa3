using System.Numerics;
using System.Text.Json;
using System.Text.Json.Nodes;
using Rodwright.Drawings.Formats.Models;
using Rodwright.Geometry;
using SharpGLTF.Schema2;
using SharpGLTF.Transforms;

namespace Rodwright.Drawings.Formats.Gltf;

/// <summary>
/// Writes pieces as a binary glTF 2.0 file, the open format of three-dimensional models for browsers: one named node a piece under one root, which alone turns
/// millimetres with z up into the format's metres with y up. Equal pieces share a mesh. Where pieces have a way apart, the exploded view is an animation of the file.
/// </summary>
public static class GlbWriter
{
    /// <summary>The file's bytes, the same for the same pieces. Pieces without wood are left out.</summary>
    /// <param name="title">Name of the root node.</param>
    /// <param name="pieces">In the order of the nodes.</param>
    public static byte[] Write(string title, IReadOnlyList<ModelPiece> pieces) => Write(title, pieces, new PlainMeshes(), null);

    /// <summary>
    /// The same pieces with what a viewer needs to draw them as on paper: normals that run along rounds, arrises as lines, and rounds as lines where they turn out of
    /// sight.
    /// </summary>
    /// <param name="title">Name of the root node.</param>
    /// <param name="pieces">In the order of the nodes.</param>
    /// <param name="extras">An object whose properties become extras of the root node; null for none.</param>
    public static byte[] WriteDrawn(string title, IReadOnlyList<ModelPiece> pieces, JsonElement? extras = null) => Write(title, pieces, new DrawnMeshes(), extras);

    private static byte[] Write(string title, IReadOnlyList<ModelPiece> pieces, Meshes meshes, JsonElement? extras)
    {
        var model = ModelRoot.CreateModel();
        model.Asset.Generator = "Rodwright";
        var solids = pieces.Where(p => !p.Shape.Faces.IsEmpty).ToList();
        var numbers = solids.ConvertAll(meshes.Add);
        var materials = new Dictionary<ModelMaterial, Material>();
        var made = meshes.Write(model, look => materials.TryGetValue(look, out var known) ? known : materials[look] = MaterialOf(model, look));
        var root = model.UseScene(0).CreateNode(title);
        // x stays, y runs away from the viewer (-z), z becomes y; all in metres.
        root.LocalMatrix = new(0.001f, 0, 0, 0, 0, 0, -0.001f, 0, 0, 0.001f, 0, 0, 0, 0, 0, 1);
        if (extras is { } own) root.Extras = JsonObject.Create(own);
        var nodes = new List<Node>(solids.Count);
        for (var i = 0; i < solids.Count; i++)
        {
            var node = root.CreateNode(solids[i].Name);
            node.LocalTransform = PlaceOf(solids[i]);
            node.Mesh = made[numbers[i]];
            node.Extras = ExtrasOf(solids[i]);
            nodes.Add(node);
        }
        ApartAnimation.Add(model, nodes.Zip(solids));
        model.MergeBuffers();
        // The library's own check of every number takes longer than all the rest, and the format's validator judges the files in the tests.
        return [.. model.WriteGLB(new WriteSettings { Validation = SharpGLTF.Validation.ValidationMode.Skip })];
    }

    private static JsonObject ExtrasOf(ModelPiece piece)
    {
        var extras = new JsonObject();
        if (piece.PartId.Length > 0) (extras["part"], extras["mark"]) = (piece.PartId, piece.Mark);
        if (piece.Extras is not { } more) return extras;
        foreach (var property in more.EnumerateObject()) extras[property.Name] = JsonNode.Parse(property.Value.GetRawText());
        return extras;
    }

    private static Material MaterialOf(ModelRoot model, ModelMaterial look)
    {
        var material = model.CreateMaterial(look.Name);
        material.InitializePBRMetallicRoughness();
        var colour = material.FindChannel("BaseColor")!.Value;
        colour.Color = new((float)look.Red, (float)look.Green, (float)look.Blue, 1);
        var dull = material.FindChannel("MetallicRoughness")!.Value;
        dull.SetFactor("MetallicFactor", 0);
        dull.SetFactor("RoughnessFactor", 0.9f);
        return material;
    }

    /// <summary>The format moves no node that has a matrix: a piece that moves has its turn and its place apart.</summary>
    private static AffineTransform PlaceOf(ModelPiece piece) => piece.Apart.IsEmpty
        ? MatrixOf(piece.Frame)
        : new AffineTransform(null, Quaternion.CreateFromRotationMatrix(MatrixOf(piece.Frame)), MatrixOf(piece.Frame).Translation);

    private static Matrix4x4 MatrixOf(Frame3 f) => new(
        (float)f.U.X, (float)f.U.Y, (float)f.U.Z, 0,
        (float)f.V.X, (float)f.V.Y, (float)f.V.Z, 0,
        (float)f.W.X, (float)f.W.Y, (float)f.W.Z, 0,
        (float)f.Origin.X, (float)f.Origin.Y, (float)f.Origin.Z, 1);
}
