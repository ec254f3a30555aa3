using Rodwright.Drawings.Formats.Gltf;
using Rodwright.Drawings.Formats.Models;
using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using Rodwright.Joinery;
using Rodwright.Joinery.Solids;
using SharpGLTF.Schema2;
using Xunit;
using Jobs = Rodwright.Testing.Samples;
using Vector = System.Numerics.Vector3;

namespace Rodwright.Drawings.Tests.Gltf;

/// <summary>GLB files read back, and judged by the format's own validator.</summary>
public class GlbWriterTests
{
    private static readonly ModelMaterial Timber = new("redwood", 0.6, 0.4, 0.2);

    public static TheoryData<string> Names => [.. Jobs.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_validator_finds_nothing_in_the_model_of_a_sample(string name)
    {
        var solids = KitSolids.Of(Stair.SetOut(Jobs.Job(name)).Value!.Kit);
        var file = GlbWriter.Write(name, Pieces(solids));
        var report = GltfValidator.Check(file);
        Assert.Equal(0, report.GetProperty("issues").GetProperty("numErrors").GetInt32());
        Assert.Equal(0, report.GetProperty("issues").GetProperty("numWarnings").GetInt32());
        // The validator counts meshes; those that equal pieces share count once.
        Assert.Equal(ModelRoot.ParseGLB(file).LogicalMeshes.Count, report.GetProperty("info").GetProperty("drawCallCount").GetInt32());
    }

    [Fact]
    public void The_validator_notices_a_spoilt_file()
    {
        var file = GlbWriter.Write("board", [Board("tread-1", "T1", default)]);
        // The last four bytes are the last corner of the last triangle (positions come first): a corner that is not there.
        file.AsSpan(file.Length - 4).Fill(0x7f);
        Assert.NotEqual(0, GltfValidator.Check(file).GetProperty("issues").GetProperty("numErrors").GetInt32());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_piece_is_a_named_node_that_stands_where_the_part_stands_in_metres_with_y_up(string name)
    {
        var solids = KitSolids.Of(Stair.SetOut(Jobs.Job(name)).Value!.Kit);
        var model = ModelRoot.ParseGLB(GlbWriter.Write(name, Pieces(solids)));
        var root = Assert.Single(model.DefaultScene.VisualChildren);
        Assert.Equal(name, root.Name);
        Assert.Equal(solids.Select(s => s.Part.Name), root.VisualChildren.Select(n => n.Name));
        foreach (var (solid, node) in solids.Zip(root.VisualChildren))
        {
            Assert.Equal(solid.Part.Id, (string?)node.Extras!["part"]);
            Assert.Equal(solid.Part.Mark, (string?)node.Extras!["mark"]);
            var primitive = Assert.Single(node.Mesh.Primitives);
            var positions = primitive.GetVertexAccessor("POSITION").AsVector3Array().Select(p => Vector.Transform(p, node.WorldMatrix)).ToList();
            var box = solid.InWorld.Bounds;
            Near(box.Min.X, positions.Min(p => p.X));
            Near(box.Max.X, positions.Max(p => p.X));
            Near(box.Min.Z, positions.Min(p => p.Y));
            Near(box.Max.Z, positions.Max(p => p.Y));
            Near(-box.Max.Y, positions.Min(p => p.Z));
            Near(-box.Min.Y, positions.Max(p => p.Z));
            var volume = primitive.GetTriangleIndices().Sum(t => (double)Vector.Dot(positions[t.A] - positions[0], Vector.Cross(positions[t.B] - positions[0], positions[t.C] - positions[0])) / 6);
            Assert.Equal(1, volume * 1e9 / solid.Shape.Volume, 1e-3);
        }

        static void Near(double millimetres, float metres) => Assert.Equal(millimetres / 1000, metres, 2e-6);
    }

    [Fact]
    public void Equal_pieces_share_a_mesh_and_different_ones_do_not()
    {
        var there = new Frame3(new(0, 250, 200), new(1, 0, 0), new(0, 1, 0));
        var wider = new ModelPiece("tread-3", "T3", "tread 3", SolidMaker.Of(new Extrusion(World, Path2.Rectangle(0, 0, 901, 250), 22)), there, Timber);
        var model = ModelRoot.ParseGLB(GlbWriter.Write("steps", [Board("tread-1", "T1", there), Board("tread-2", "T2", there), wider]));
        Assert.Equal(2, model.LogicalMeshes.Count);
        Assert.Single(model.LogicalMaterials);
        Assert.Equal(4, model.LogicalNodes.Count);
    }

    [Fact]
    public void The_same_pieces_give_the_same_bytes()
    {
        var solids = KitSolids.Of(Stair.SetOut(Jobs.Job("left-kite-low")).Value!.Kit);
        Assert.Equal(GlbWriter.Write("stair", Pieces(solids)), GlbWriter.Write("stair", Pieces(solids)));
    }

    private static List<ModelPiece> Pieces(IEnumerable<PlacedSolid> solids) =>
        [.. solids.Select(s => new ModelPiece(s.Part.Id, s.Part.Mark, s.Part.Name, s.Shape, s.Frame, Timber with { Name = s.Part.Material }))];

    private static ModelPiece Board(string id, string mark, Frame3 frame) =>
        new(id, mark, id, SolidMaker.Of(new Extrusion(World, Path2.Rectangle(0, 0, 900, 250), 22)), frame == default ? World : frame, Timber);

    private static Frame3 World { get; } = new(default, new(1, 0, 0), new(0, 1, 0));
}
