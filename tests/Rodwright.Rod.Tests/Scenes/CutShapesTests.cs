using System.Text.Json;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Scenes;
using Rodwright.Rod.Things;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Scenes;

/// <summary>Volumes of cuts: closed, as large as the description says, and where the part stands.</summary>
public class CutShapesTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_cut_of_a_sample_is_a_closed_volume_within_the_box_of_its_part(string name)
    {
        var stair = RodJobs.Stair(name);
        foreach (var part in stair.Kit.Parts)
        {
            var box = PartBox(part);
            foreach (var cut in part.Cuts)
            {
                var (volume, points, id) = Read(CutShapes.Of(stair, ThingId.Of(part, cut)));
                Assert.Equal(ThingId.Of(part, cut), id);
                Assert.True(volume > 0, id);
                // A cut that reaches past the outline counts for what of it is wood.
                Assert.True(volume < SizeOf(part, cut) * (1 + 1e-3), $"{id}: {volume}");
                Assert.All(points, p => Assert.True(p.X > box.Min.X && p.Y > box.Min.Y && p.Z > box.Min.Z && p.X < box.Max.X && p.Y < box.Max.Y && p.Z < box.Max.Z, id));
            }
        }
    }

    [Fact]
    public void Mortices_and_peg_holes_of_a_newel_are_as_large_as_their_outline_and_depth()
    {
        var stair = RodJobs.Stair("left-kite-low");
        var newel = stair.Kit.Find("newel-turn");
        var cuts = newel.Cuts.Where(c => c.Kind is CutKind.Mortice or CutKind.Haunch or CutKind.Bore).ToList();
        Assert.True(cuts.Count >= 8);
        foreach (var cut in cuts)
        {
            var (volume, points, _) = Read(CutShapes.Of(stair, ThingId.Of(newel, cut)));
            Assert.Equal(1, volume / (cut.Shape.Area * cut.Depth), 0.01);
            var frame = newel.Faces[cut.Face].Frame;
            Assert.Equal(-cut.Depth, points.Min(p => frame.ToLocal(p).W), 1e-2);
            Assert.Equal(0, points.Max(p => frame.ToLocal(p).W), 1e-2);
        }
    }

    [Fact]
    public void The_cheek_of_a_tenon_shows_the_tenon_that_is_left()
    {
        var stair = RodJobs.Stair("left-kite-low");
        var @string = stair.Kit.Strings.First(s => !s.Site.IsWall);
        var tenon = @string.Tenons.First(t => t.IsUpper);
        var cut = @string.Part.Cuts.First(c => c.Kind == CutKind.TenonCheek && c.Joint.EndsWith(tenon.Newel, StringComparison.Ordinal));
        var (volume, _, _) = Read(CutShapes.Of(stair, ThingId.Of(@string.Part, cut)));
        // Two tenons of a third each, and the haunch between them; peg holes are cuts of their own.
        Assert.Equal(1, volume / (tenon.Thickness * tenon.Third * (2 * tenon.Length + tenon.Haunch)), 1e-3);
    }

    [Fact]
    public void A_rounded_edge_shows_what_the_round_takes_off_both_arrises()
    {
        var stair = RodJobs.Stair("straight-flight");
        var tread = stair.Kit.Find("tread-2");
        var cut = tread.Cuts.Single(c => c.Kind == CutKind.RoundedEdge);
        var (volume, _, _) = Read(CutShapes.Of(stair, ThingId.Of(tread, cut)));
        Assert.Equal(1, volume / (2 * (1 - Math.PI / 4) * cut.Depth * cut.Depth * tread.FaceSide.Outline.Bounds.Width), 0.02);
    }

    [Fact]
    public void A_rounded_edge_round_the_end_of_a_step_shows_what_Pappus_says_the_round_takes()
    {
        var stair = RodJobs.Stair("bull-nose");
        var tread = stair.Kit.Find("tread-1");
        var cut = tread.Cuts.Single(c => c.Kind == CutKind.RoundedEdge);
        var (volume, _, _) = Read(CutShapes.Of(stair, ThingId.Of(tread, cut)));
        var (r, bend, edge) = (cut.Depth, stair.Plan.RoundedEnds[0].Radius + stair.Job.Practice.Nosing, cut.Shape.Length);
        // Of a square less its quarter circle: its area, and how far its centroid lies within the square's edge (Pappus's second theorem).
        var (area, within) = ((1 - Math.PI / 4) * r * r, r * (5.0 / 6 - Math.PI / 4) / (1 - Math.PI / 4));
        Assert.Equal(1, volume / (2 * area * (edge - Math.PI / 2 * within)), 0.02);
        Assert.True(edge > bend * Math.PI / 2 + 500);
    }

    [Theory]
    [InlineData("tread-2")]
    [InlineData("tread-2/no-such-cut")]
    [InlineData("no-such-part/nosing")]
    [InlineData("")]
    [InlineData("/")]
    public void What_is_no_cut_has_no_volume(string id) => Assert.Null(CutShapes.Of(RodJobs.Stair("straight-flight"), id));

    private static Geometry.Solids.Box3 PartBox(Part part)
    {
        var box = new PlacedSolid(part, PartSolid.Of(part with { Cuts = [] })).InWorld.Bounds;
        return new(box.Min + new Vector3(-0.01, -0.01, -0.01), box.Max + new Vector3(0.01, 0.01, 0.01));
    }

    private static double SizeOf(Part part, Cut cut) => cut.Kind switch
    {
        CutKind.RoundedEdge => 2 * (1 - Math.PI / 4) * cut.Depth * cut.Depth * (cut.Shape.EdgeCount > 1 ? cut.Shape.Length : part.FaceSide.Outline.Bounds.Width) * 1.05,
        CutKind.TenonCheek => cut.Shape.Area * (part.FaceSide.Thickness - cut.Depth),
        _ => cut.Shape.Area * cut.Depth,
    };

    /// <summary>Volume, points and id of the text, which must close: every edge of its triangles is run both ways.</summary>
    private static (double Volume, List<Point3> Points, string Id) Read(string? text)
    {
        Assert.NotNull(text);
        using var json = JsonDocument.Parse(text);
        var numbers = json.RootElement.GetProperty("points").EnumerateArray().Select(n => n.GetDouble()).ToList();
        var points = Enumerable.Range(0, numbers.Count / 3).Select(i => new Point3(numbers[3 * i], numbers[3 * i + 1], numbers[3 * i + 2])).ToList();
        var order = json.RootElement.GetProperty("triangles").EnumerateArray().Select(n => n.GetInt32()).ToList();
        var (six, edges) = (0.0, new HashSet<(int, int)>());
        for (var i = 0; i < order.Count; i += 3)
        {
            six += (points[order[i]] - points[0]).Dot((points[order[i + 1]] - points[0]).Cross(points[order[i + 2]] - points[0]));
            for (var k = 0; k < 3; k++) Assert.True(edges.Add((order[i + k], order[i + (k + 1) % 3])));
        }
        Assert.All(edges, e => Assert.Contains((e.Item2, e.Item1), edges));
        Assert.All(json.RootElement.GetProperty("lines").EnumerateArray(), n => Assert.InRange(n.GetInt32(), 0, points.Count - 1));
        return (six / 6, points, json.RootElement.GetProperty("id").GetString()!);
    }
}
