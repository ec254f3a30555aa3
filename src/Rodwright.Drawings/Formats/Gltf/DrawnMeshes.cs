using Rodwright.Drawings.Formats.Models;
using Rodwright.Geometry.Solids;
using SharpGLTF.Schema2;

namespace Rodwright.Drawings.Formats.Gltf;

/// <summary>
/// Meshes to be drawn as on paper. Each has three primitives: triangles with normals that run along rounds; arrises as lines; and the
/// edges within rounds as lines whose attributes _LEFT and _RIGHT are the normals at either side, so that a viewer can line in the one where the round turns out of sight.
/// A shape without rounds has no third one.
/// </summary>
internal sealed class DrawnMeshes : Meshes
{
    private readonly Floats corners = new(), normals = new(), ends = new(), left = new(), right = new();
    private readonly Indices triangles = new(), arrises = new();
    private readonly List<Taken> taken = [];

    private sealed record Taken(
        Floats.Stretch Corners, Floats.Stretch Normals, Floats.Stretch Triangles,
        Floats.Stretch Ends, Floats.Stretch Arrises, Floats.Stretch RoundEnds, Floats.Stretch Left, Floats.Stretch Right);

    protected override void TakeIn(ModelPiece piece)
    {
        var (solid, mesh, lines) = (piece.Shape, ShadedMesh.Of(piece.Shape), SolidLines.Of(piece.Shape));
        taken.Add(new(
            corners.Add(mesh.Corners), normals.Add(mesh.Normals), triangles.Add(mesh.Triangles),
            ends.Add(solid.Vertices), arrises.Add(lines.Arrises.SelectMany(e => new[] { e.From, e.To })),
            ends.Add(lines.Rounds.SelectMany(r => new[] { solid.Vertices[r.From], solid.Vertices[r.To] })),
            left.Add(lines.Rounds.SelectMany(r => new[] { r.Left, r.Left })), right.Add(lines.Rounds.SelectMany(r => new[] { r.Right, r.Right }))));
    }

    protected override void Fill(Mesh mesh, int number, Material material)
    {
        var own = taken[number];
        var wood = mesh.CreatePrimitive();
        corners.Give(wood, "POSITION", own.Corners);
        normals.Give(wood, "NORMAL", own.Normals);
        triangles.Give(wood, own.Triangles);
        wood.Material = material;
        var lines = mesh.CreatePrimitive();
        lines.DrawPrimitiveType = PrimitiveType.LINES;
        ends.Give(lines, "POSITION", own.Ends);
        arrises.Give(lines, own.Arrises);
        lines.Material = material;
        if (own.RoundEnds.Count == 0) return;
        var rounds = mesh.CreatePrimitive();
        rounds.DrawPrimitiveType = PrimitiveType.LINES;
        ends.Give(rounds, "POSITION", own.RoundEnds);
        left.Give(rounds, "_LEFT", own.Left);
        right.Give(rounds, "_RIGHT", own.Right);
        rounds.Material = material;
    }
}
