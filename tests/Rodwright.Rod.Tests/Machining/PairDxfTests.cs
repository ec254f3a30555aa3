using Rodwright.Drawings.Formats;
using Rodwright.Geometry;
using Rodwright.Rod.Machining;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Machining;

public sealed class PairDxfTests
{
    public static TheoryData<string> AllSamples => [.. Samples.Names];

    private static readonly Lazy<Dictionary<string, IReadOnlyDictionary<string, DxfReader.Drawing>>> Read = new(() => Samples.Names.ToDictionary(s => s, s => DxfReader.Read(Files(s))));

    private static IEnumerable<WrittenFile> Files(string sample)
    {
        var (rod, left) = (RodJobs.Of(sample), MachiningList.Left(RodJobs.Of(sample)));
        return PairDxf.Files(rod.Stair.Kit, left).Concat(PartFiles.Make(rod, left).Where(f => rod.Stair.Kit.Strings.Any(s => s.Site.Mark + ".dxf" == f.Name)));
    }

    [Theory]
    [InlineData("straight-flight", "pair-F1-W1")]
    [InlineData("left-kite-low", "pair-F1-W1 pair-F2-W2")]
    [InlineData("right-kite-top", "pair-W1-F1 pair-W2-F2")]
    [InlineData("open-well", "pair-F1-W1 pair-F2-W2 pair-F3-W3")]
    public void Every_flight_has_the_two_strings_it_runs_between(string sample, string names) =>
        Assert.Equal(names, string.Join(' ', StringPair.Of(RodJobs.Stair(sample).Kit).Select(p => p.Name)));

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void A_pair_passes_the_audit_and_holds_all_of_both_drawings(string sample)
    {
        foreach (var pair in StringPair.Of(RodJobs.Stair(sample).Kit))
        {
            var read = Read.Value[sample][pair.Name + ".dxf"];
            Assert.Empty(read.Errors);
            var own = new[] { pair.Lower, pair.Upper }.Select(b => Read.Value[sample][b.Site.Mark + ".dxf"]).ToList();
            // Layer by layer as many, as long and as large; only the risers squared across come on top.
            foreach (var layer in own.SelectMany(o => o.Paths).Select(p => p.Layer).Distinct())
            {
                var (apart, together) = (own.SelectMany(o => o.Paths).Where(p => p.Layer == layer).ToList(), read.Paths.Where(p => p.Layer == layer).ToList());
                Assert.Equal(apart.Count + (layer == "MARKING" ? pair.Risers.Length : 0), together.Count);
                if (layer == "MARKING") continue;
                Assert.Equal(apart.Sum(p => p.Path.Length), together.Sum(p => p.Path.Length), 0.01);
                // Turned, not mirrored: areas keep their sign.
                Assert.Equal(apart.Sum(p => p.Path.Area), together.Sum(p => p.Path.Area), 1.0);
            }
        }
    }

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void Risers_both_carry_stand_in_one_line_square_across_them(string sample)
    {
        foreach (var pair in StringPair.Of(RodJobs.Stair(sample).Kit))
        {
            Assert.True(pair.Risers.Length > 1);
            var (lower, upper) = (pair.Lying(pair.Lower), pair.Lying(pair.Upper));
            var along = 0.0;
            foreach (var number in pair.Risers)
            {
                var (a, b) = (lower.Motion(StringPair.Place(pair.Lower, number)!.Value), upper.Motion(StringPair.Place(pair.Upper, number)!.Value));
                Assert.Equal(a.X, b.X, 0.01);
                // On the level pitch line, both climbing to the right.
                Assert.Equal(0, a.Y, 0.01);
                Assert.Equal(0, b.Y, 0.01);
                Assert.True(number == pair.Risers[0] || a.X > along);
                along = a.X;
            }
        }
    }

    [Fact]
    public void Housings_face_each_other_and_the_boards_lie_clear()
    {
        var read = Read.Value["straight-flight"]["pair-F1-W1.dxf"];
        var outlines = read.Paths.Where(p => p.Layer == "OUTLINE").Select(p => p.Path).OrderBy(p => p.Bounds.MinY).ToList();
        Assert.Equal(2, outlines.Count);
        Assert.True(outlines[1].Bounds.MinY > outlines[0].Bounds.MaxY + 20);
        // Nosings are the tops of the zigzag: on the lower board near its upper edge, on the upper one near its lower.
        var rounds = read.Paths.Where(p => p.Layer == "HOUSING-12").SelectMany(p => p.Path.Vertices.Where(v => v.Bulge != 0).Select(v => v.At)).ToList();
        var (below, above) = (rounds.Where(p => p.Y < outlines[0].Bounds.MaxY).ToList(), rounds.Where(p => p.Y > outlines[1].Bounds.MinY).ToList());
        Assert.Equal(rounds.Count, below.Count + above.Count);
        Assert.All(below, p => Assert.True(outlines[0].Bounds.MaxY - p.Y < p.Y - outlines[0].Bounds.MinY));
        Assert.All(above, p => Assert.True(p.Y - outlines[1].Bounds.MinY < outlines[1].Bounds.MaxY - p.Y));
    }
}
