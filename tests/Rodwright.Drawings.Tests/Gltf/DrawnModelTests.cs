using System.Text.Json;
using Rodwright.Drawings.Formats.Gltf;
using Rodwright.Drawings.Formats.Models;
using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using Rodwright.Joinery;
using Rodwright.Rod.Scenes;
using SharpGLTF.Schema2;
using Xunit;
using Jobs = Rodwright.Testing.Samples;

namespace Rodwright.Drawings.Tests.Gltf;

/// <summary>Models to be drawn as on paper: valid, and with what the drawing needs.</summary>
public class DrawnModelTests
{
    private static readonly ModelMaterial Timber = new("redwood", 0.6, 0.4, 0.2);

    public static TheoryData<string> Names => [.. Jobs.Names];

    private static Frame3 World { get; } = new(default, new(1, 0, 0), new(0, 1, 0));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_validator_finds_nothing_in_the_scene_of_a_sample(string name)
    {
        var report = GltfValidator.Check(StairScene.Write(Stair.SetOut(Jobs.Job(name)).Value!).Bytes.ToArray());
        var issues = report.GetProperty("issues");
        Assert.Equal((0, 0, 0), (issues.GetProperty("numErrors").GetInt32(), issues.GetProperty("numWarnings").GetInt32(), issues.GetProperty("numInfos").GetInt32()));
    }

    [Fact]
    public void A_board_is_drawn_with_its_arrises_and_no_rounds()
    {
        var mesh = Assert.Single(Read(Piece(Path2.Rectangle(0, 0, 300, 100))).LogicalMeshes);
        Assert.Equal([PrimitiveType.TRIANGLES, PrimitiveType.LINES], mesh.Primitives.Select(p => p.DrawPrimitiveType));
        Assert.Equal(24, mesh.Primitives[0].GetVertexAccessor("NORMAL").Count);
        Assert.Equal(12, mesh.Primitives[1].GetLineIndices().Count());
    }

    [Fact]
    public void A_round_is_drawn_with_the_normals_at_either_side_of_its_edges()
    {
        var mesh = Assert.Single(Read(Piece(Path2.Circle(new(0, 0), 50))).LogicalMeshes);
        Assert.Equal(3, mesh.Primitives.Count);
        var rounds = mesh.Primitives[2];
        var (at, left, right) = (rounds.GetVertexAccessor("POSITION").AsVector3Array(), rounds.GetVertexAccessor("_LEFT").AsVector3Array(), rounds.GetVertexAccessor("_RIGHT").AsVector3Array());
        Assert.True(at.Count > 60);
        for (var i = 0; i < at.Count; i++)
        {
            // Out of the post, and each turned a little to its own side of the edge.
            var outward = System.Numerics.Vector3.Normalize(new(at[i].X, at[i].Y, 0));
            Assert.InRange(System.Numerics.Vector3.Dot(outward, left[i]), 0.99f, 0.99999f);
            Assert.Equal(System.Numerics.Vector3.Dot(outward, left[i]), System.Numerics.Vector3.Dot(outward, right[i]), 1e-4f);
            Assert.NotEqual(left[i], right[i]);
        }
    }

    [Fact]
    public void Extras_are_written_and_what_is_no_part_says_so_by_having_none()
    {
        using var own = JsonDocument.Parse("""{"room": "wall", "looks": [0, 1, 0]}""");
        using var whole = JsonDocument.Parse("""{"views": {"plan": [0, 0, 1]}}""");
        var model = ModelRoot.ParseGLB(GlbWriter.WriteDrawn("stair", [Piece(Path2.Rectangle(0, 0, 300, 100)) with { PartId = "", Extras = own.RootElement }], whole.RootElement));
        var root = Assert.Single(model.DefaultScene.VisualChildren);
        Assert.Equal(1, (int)root.Extras!["views"]!["plan"]![2]!);
        var extras = Assert.Single(root.VisualChildren).Extras!;
        Assert.Equal("wall", (string?)extras["room"]);
        Assert.Null(extras["part"]);
        Assert.Null(extras["mark"]);
    }

    private static ModelPiece Piece(Path2 outline) => new("tread-1", "T1", "tread 1", SolidMaker.Of(new Extrusion(World, outline, 22)), World, Timber);

    private static ModelRoot Read(params IReadOnlyList<ModelPiece> pieces) => ModelRoot.ParseGLB(GlbWriter.WriteDrawn("stair", pieces));
}
