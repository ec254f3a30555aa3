using System.Text;
using System.Text.Json;
using Rodwright.Drawings.Formats;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Packs;
using Jobs = Rodwright.Testing.Samples;
using Xunit;

namespace Rodwright.Drawings.Tests.Models;

/// <summary>Models read back by programs that are not ours: every piece there, as large and where it stands in ours.</summary>
public sealed class ReadBackTests
{
    private static readonly DateOnly Day = new(2026, 11, 26);

    // Both readers hold corners as single-precision numbers of up to a few metres.
    private const double Near = 0.002;

    // A right-hand stair of winders with a rounded step: every kind of solid there is.
    [Fact]
    public void A_CAD_kernel_finds_one_solid_a_piece_of_our_volume_and_box()
    {
        var stair = Stair.SetOut(Jobs.Job("bull-nose")).Value!;

        var read = ModelReaders.Step(StairModel.Step(stair, Day).Bytes.Span);

        Assert.True(read.GetProperty("success").GetBoolean());
        Assert.Equal(stair.Job.Title, read.GetProperty("root").GetString());
        AreOurs(stair, read.GetProperty("pieces"));
    }

    [Theory]
    [InlineData("bull-nose")]
    [InlineData("straight-flight")]
    [InlineData("open-well")]
    [InlineData("balustrade")]
    public void A_reader_of_building_models_finds_an_IfcStair_of_our_pieces(string sample)
    {
        var stair = Stair.SetOut(Jobs.Job(sample)).Value!;

        var read = ModelReaders.Ifc(StairModel.Ifc(stair, Day).Bytes.Span);

        Assert.Equal("IFC4", read.GetProperty("schema").GetString());
        var whole = Assert.Single(read.GetProperty("stairs").EnumerateArray());
        Assert.Equal(stair.Job.Title, whole.GetProperty("name").GetString());
        Assert.Equal(sample switch { "bull-nose" or "balustrade" => "QUARTER_WINDING_STAIR", "straight-flight" => "STRAIGHT_RUN_STAIR", _ => "TWO_QUARTER_TURN_STAIR" }, whole.GetProperty("type").GetString());
        Assert.Equal(stair.Kit.Parts.Length, read.GetProperty("parts").GetInt32());
        var properties = read.GetProperty("properties");
        Assert.Equal(stair.Plan.Risers, properties.GetProperty("NumberOfRiser").GetInt32());
        Assert.Equal(stair.Plan.Rise, properties.GetProperty("RiserHeight").GetDouble(), 1e-6);
        Assert.Equal(stair.Plan.Going, properties.GetProperty("TreadLength").GetDouble(), 1e-6);
        AreOurs(stair, read.GetProperty("pieces"));
        foreach (var piece in read.GetProperty("pieces").EnumerateArray())
        {
            var part = stair.Kit.Parts.First(p => p.Mark == piece.GetProperty("mark").GetString());
            Assert.Equal(
                part.Kind switch
                {
                    PartKind.WallString or PartKind.NewelString or PartKind.Carriage => "STRINGER",
                    PartKind.Newel or PartKind.WallNewel => "POST",
                    PartKind.Handrail or PartKind.WallRail => "HANDRAIL",
                    PartKind.Bracket or PartKind.CarriageBracket => "BRACKET",
                    PartKind.Apron => "CLADDING",
                    _ => "USERDEFINED",
                },
                piece.GetProperty("type").GetString());
            if (part.Kind is PartKind.Handrail) Assert.Equal("IfcRailing", piece.GetProperty("kind").GetString());
        }
    }

    [Fact]
    public void Ids_of_a_building_model_are_the_same_in_every_file_and_no_two_alike()
    {
        var stair = Stair.SetOut(Jobs.Job("straight-flight")).Value!;

        var (one, other) = (Ids(StairModel.Ifc(stair, Day)), Ids(StairModel.Ifc(stair, Day.AddDays(1))));

        Assert.Equal(one, other);
        Assert.Equal(one.Count, one.Distinct().Count());
        Assert.All(one, id => Assert.Matches("^[0-3][0-9A-Za-z_$]{21}$", id));
    }

    [Fact]
    public void All_three_models_are_of_the_same_pieces_and_the_same_bytes_every_time()
    {
        var stair = Stair.SetOut(Jobs.Job("straight-flight")).Value!;

        var files = StairModel.All(stair, Day);

        Assert.Equal(["stair.glb", "stair.step", "stair.ifc"], files.Select(f => f.Name));
        Assert.Equal(files.Select(f => f.Bytes.ToArray()), [StairModel.Glb(stair).Bytes.ToArray(), StairModel.Step(stair, Day).Bytes.ToArray(), StairModel.Ifc(stair, Day).Bytes.ToArray()]);
    }

    private static List<string> Ids(WrittenFile file) =>
        [.. Encoding.ASCII.GetString(file.Bytes.Span).Split('\n').Where(l => l.Contains("=IFC", StringComparison.Ordinal) && l.Contains("('", StringComparison.Ordinal)
            && (l.Contains(",$,", StringComparison.Ordinal) || l.Contains("IFCREL", StringComparison.Ordinal)))
            .Select(l => l[(l.IndexOf("('", StringComparison.Ordinal) + 2)..]).Select(l => l[..l.IndexOf('\'', StringComparison.Ordinal)]).Where(id => id.Length == 22)];

    private static void AreOurs(Stair stair, JsonElement pieces)
    {
        var read = pieces.EnumerateArray().ToList();
        Assert.Equal(stair.Kit.Parts.Select(p => p.Name).Order(StringComparer.Ordinal), read.Select(p => p.GetProperty("name").GetString()!).Order(StringComparer.Ordinal));
        // Pieces of two landings may have one name: each is ours that stands nearest, and none is taken twice.
        var ours = KitSolids.Of(stair.Kit).ToList();
        foreach (var piece in read)
        {
            var (name, least) = (piece.GetProperty("name").GetString(), piece.GetProperty("min").EnumerateArray().Select(n => n.GetDouble()).ToList());
            var solid = ours.Where(s => s.Part.Name == name).MinBy(s => s.InWorld.Bounds.Min.DistanceTo(new(least[0], least[1], least[2])))!;
            ours.Remove(solid);
            Assert.Equal(1, piece.GetProperty("volume").GetDouble() / solid.Shape.Volume, 1e-5);
            var box = solid.InWorld.Bounds;
            Assert.All(new[] { (box.Min, "min"), (box.Max, "max") }, corner =>
            {
                var at = piece.GetProperty(corner.Item2).EnumerateArray().Select(n => n.GetDouble()).ToList();
                Assert.Equal(corner.Item1.X, at[0], Near);
                Assert.Equal(corner.Item1.Y, at[1], Near);
                Assert.Equal(corner.Item1.Z, at[2], Near);
            });
        }
    }
}
