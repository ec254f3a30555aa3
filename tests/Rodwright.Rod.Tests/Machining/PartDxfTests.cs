using System.Globalization;
using Rodwright.Drawings.Formats;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Machining;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Machining;

public sealed class PartDxfTests
{
    public static TheoryData<string> AllSamples => [.. Samples.Names];

    private static readonly Lazy<Dictionary<string, IReadOnlyDictionary<string, DxfReader.Drawing>>> Read = new(() =>
        Samples.Names.ToDictionary(s => s, s => DxfReader.Read(PartFiles.Make(RodJobs.Of(s)).Where(f => f.Name.EndsWith(".dxf", StringComparison.Ordinal)))));

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void Every_part_passes_the_audit_with_nothing_to_mend(string sample)
    {
        var kit = RodJobs.Stair(sample).Kit;
        var read = Read.Value[sample];
        Assert.Equal(kit.Parts.Select(p => p.Mark + ".dxf").Distinct().Order(), read.Keys.Order());
        Assert.All(read, file => Assert.True(file.Value.Errors.Count == 0, file.Key + ": " + string.Join("; ", file.Value.Errors)));
    }

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void Outlines_and_blanks_read_back_true_to_a_hundredth(string sample)
    {
        foreach (var part in RodJobs.Stair(sample).Kit.Parts)
        {
            var paths = Read.Value[sample][part.Mark + ".dxf"].Paths;
            // A bent riser is drawn as the board it is before it is bent: its own test below.
            for (var i = 0; i < part.Faces.Length && part.Kind != PartKind.BentRiser; i++)
            {
                var layer = part.Kind.IsPost() ? part.Faces[i].Looks.ToUpperInvariant() + "-OUTLINE" : i == 0 ? "OUTLINE" : part.Kind == PartKind.WallString ? "END-OUTLINE" : "TOP-EDGE";
                var outline = Assert.Single(paths, p => p.Layer == layer).Path;
                Assert.True(Math.Abs(outline.Length - part.Faces[i].Outline.Length) < 0.01, $"{part.Mark} {layer}: {outline.Length} for {part.Faces[i].Outline.Length}");
                Assert.True(Math.Abs(outline.Area - part.Faces[i].Outline.Area) < 1, $"{part.Mark} {layer}: area, which a mirrored drawing would turn negative");
            }
            if (part.Kind.IsPost()) continue;
            var blank = Assert.Single(paths, p => p.Layer == "BLANK").Path.Bounds;
            Assert.Equal(0, blank.MinX, 6);
            Assert.Equal(0, blank.MinY, 6);
            Assert.Equal(part.Blank.Length, blank.MaxX, 0.0051);
            Assert.Equal(part.Blank.Width, blank.MaxY, 0.0051);
        }
    }

    [Fact]
    public void A_bent_riser_reads_back_as_its_flat_board_with_the_bend_and_the_wedges_squared_across()
    {
        var stair = RodJobs.Stair("bull-nose");
        var (practice, step, end) = (stair.Job.Practice, stair.Job.BottomStep, stair.Plan.RoundedEnds[0]);
        var paths = Read.Value["bull-nose"]["R1.dxf"].Paths;
        // The middle of the veneer round a quarter circle, and what stays straight up to the newel.
        var bent = end.Back - end.Radius + (end.Radius - step.Veneer / 2) * Math.PI / 2;
        var length = bent + StraightPart(stair) + practice.Housing;

        var outline = Assert.Single(paths, p => p.Layer == "OUTLINE").Path;
        Assert.Equal(length, outline.Bounds.Width, 0.01);
        Assert.Equal(stair.Plan.Rise - practice.Tread, outline.Bounds.Height, 0.01);
        // The stair is right-handed: the open end lies on the right.
        double[] across = [length - bent - 2 * step.Wedges, length - bent - step.Wedges, length - bent];
        var lines = paths.Where(p => p.Layer == "MARKING" && p.Path.EdgeCount == 1 && Math.Abs(p.Path.Bounds.Width) < 1e-9 && Math.Abs(p.Path.Length - outline.Bounds.Height) < 0.01).Select(p => p.Path.Bounds.MinX).Order().ToList();
        Assert.Equal(across.Length, lines.Count);
        Assert.All(lines.Zip(across), l => Assert.Equal(l.Second, l.First, 0.01));
        // Thinned to the veneer from its shoulder to its end.
        var edge = Assert.Single(paths, p => p.Layer == "TOP-EDGE").Path;
        Assert.Equal(length * practice.Riser - (bent + 2 * step.Wedges) * (practice.Riser - step.Veneer), Math.Abs(edge.Area), 1);

        // From the spring to the outer string's face.
        static double StraightPart(Stair stair) => stair.Plan.RoundedEnds[0].Spring.DistanceTo(stair.Plan.Riser(1).Outer);
    }

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void Every_cut_lies_on_the_layer_of_its_operation_and_depth(string sample)
    {
        foreach (var part in RodJobs.Stair(sample).Kit.Parts)
        {
            var paths = Read.Value[sample][part.Mark + ".dxf"].Paths;
            foreach (var cut in part.Cuts)
            {
                var layer = MachiningLayers.Of(cut).Name;
                if (part.Kind.IsPost()) layer = $"{part.Faces[cut.Face].Looks.ToUpperInvariant()}-{layer}";
                else if (part.Kind == PartKind.WallString && cut.Face == 1) layer = "END-" + layer;
                var own = paths.Where(p => p.Layer == layer).Select(p => p.Path).ToList();
                var shape = MachiningFrame.Place(part, cut.Face, cut.Shape);
                // Drawn as it is, or (housings) taken up in a recess that holds all its corners.
                foreach (var v in shape.Vertices)
                    Assert.True(own.Any(p => p.DistanceTo(v.At) < 0.01 || (p.Closed && p.Holds(v.At))), $"{part.Mark}: {cut.Id} is not on {layer}");
                if (cut.Kind != CutKind.Housing) Assert.Contains(own, p => Math.Abs(p.Length - shape.Length) < 0.01);
            }
        }
    }

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void Housings_that_meet_are_one_recess_of_the_same_area(string sample)
    {
        foreach (var board in RodJobs.Stair(sample).Kit.Strings)
        {
            var shapes = board.Part.Cuts.Where(c => c.Kind == CutKind.Housing).Select(c => MachiningFrame.Place(board.Part, 0, c.Shape)).ToList();
            var recesses = Read.Value[sample][board.Part.Mark + ".dxf"].Paths.Where(p => p.Layer.StartsWith("HOUSING", StringComparison.Ordinal)).Select(p => p.Path).ToList();
            Assert.True(board.Site.IsWall ? recesses.Count < shapes.Count : recesses.Count <= shapes.Count, board.Part.Mark);
            Assert.Equal(Region.Union(shapes).Sum(p => p.Area), recesses.Sum(p => p.Area), 0);
        }
    }

    [Fact]
    public void Layers_are_named_as_documented()
    {
        var read = Read.Value["left-kite-low"];
        Assert.Contains(read["W1.dxf"].Paths, p => p.Layer == "HOUSING-12");
        Assert.Contains(read["W1.dxf"].Paths, p => p.Layer == "CORNER-HOUSING-12");
        Assert.Contains(read["F1.dxf"].Paths, p => p.Layer == "CHEEK-12");
        Assert.Contains(read["F1.dxf"].Paths, p => p.Layer == "BORE-32" && Math.Abs(p.Path.Bounds.Width - 12) < 1e-6);
        Assert.Contains(read["N2.dxf"].Paths, p => p.Layer == "S-MORTICE-62");
        Assert.Contains(read["N3.dxf"].Paths, p => p.Layer == "W-NOTCH-33");
        Assert.Contains(read["T4.dxf"].Paths, p => p.Layer == "ROUND-11");
    }

    [Fact]
    public void A_half_millimetre_of_depth_keeps_its_name_within_what_the_format_allows() =>
        Assert.Equal("HOUSING-12_5", MachiningLayers.Of(new("h", CutKind.Housing, 0, Path2.Rectangle(0, 0, 1, 1), 12.5)).Name);

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void Files_have_the_same_bytes_in_any_culture(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        var plain = Everything();
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal("1,5", 1.5.ToString());
            foreach (var (a, b) in plain.Zip(Everything())) Assert.True(a.Name == b.Name && a.Bytes.Span.SequenceEqual(b.Bytes.Span), a.Name);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static List<WrittenFile> Everything() => [.. Samples.Names.SelectMany(s => PartFiles.Make(RodJobs.Of(s)))];
    }
}
