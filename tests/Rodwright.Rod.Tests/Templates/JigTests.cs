using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Geometry.Offsets;
using Rodwright.Rod.Templates;
using Rodwright.Rod.Tests.Machining;
using Rodwright.Stairs.Shops;
using Xunit;

namespace Rodwright.Rod.Tests.Templates;

public sealed class JigTests
{
    private static ShopRouter Usual => new();

    private static Jig Tread(string sample = "straight-flight", ShopRouter? router = null) => Jigs.Of(RodJobs.Of(sample) with { Router = router ?? Usual }).Single(j => j.Name == "jig-tread");

    [Fact]
    public void A_box_of_a_housing_has_the_opening_one_reckons_by_hand()
    {
        // 200 by 22, cutter 12, bush 30: nine more on every side, corners of 15.
        var jig = Jig.For("jig", "box", Path2.Rectangle(0, 0, 200, 22), Usual)!;
        var opening = Assert.Single(jig.Opening);
        Assert.Equal(9, Usual.Offset);
        Assert.Equal((-9, -9, 209, 31), (Math.Round(opening.Bounds.MinX, 3), Math.Round(opening.Bounds.MinY, 3), Math.Round(opening.Bounds.MaxX, 3), Math.Round(opening.Bounds.MaxY, 3)));
        Assert.Equal(218 * 40 - (4 - Math.PI) * 15 * 15, opening.Area, 0.5);
        Assert.Equal([15, 15, 15, 15], Enumerable.Range(0, opening.EdgeCount).Select(opening.Edge).Where(e => e.Bulge > 0).Select(e => Math.Round(Arc2.FromBulge(e.From, e.To, e.Bulge).Radius, 2)));
        Assert.Equal(4, jig.Left.Length);
        Assert.Empty(jig.Rounded);
    }

    [Theory]
    [InlineData(12, 30)]
    [InlineData(12.7, 27)]
    [InlineData(8, 17)]
    [InlineData(16, 40)]
    public void A_bush_led_round_the_opening_cuts_the_housing_and_nothing_that_shows(double cutter, double bush)
    {
        var router = new ShopRouter { HandCutter = cutter, Bush = bush };
        var jig = Tread(router: router);
        // What the bush's centre can reach, and the cutter with it.
        var way = Offset.Of(jig.Opening, -(bush / 2 - RoundCutter.Fit));
        var cut = Offset.Of(way, cutter / 2 - RoundCutter.Fit);
        var most = jig.Rounded.Length == 0 ? 0 : jig.Rounded.Max(r => r.By);
        foreach (var p in cut.SelectMany(c => c.Flattened()))
        {
            var past = jig.Housing.Holds(p) ? 0 : jig.Housing.DistanceTo(p);
            // Past the housing only where its outline turns outwards, and no farther than told.
            Assert.True(past < 0.01 || (past < most + 0.01 && jig.Rounded.Any(r => r.At.DistanceTo(p) < router.Offset + 0.1)), $"{p} is {past} outside the housing");
        }
        // Along every straight side it stands the offset away.
        foreach (var i in Enumerable.Range(0, jig.Housing.EdgeCount))
        {
            var (a, b, bulge) = jig.Housing.Edge(i);
            if (bulge != 0 || a.DistanceTo(b) < 2 * bush) continue;
            Assert.Equal(router.Offset, jig.Opening.Min(o => o.DistanceTo(a.Towards(b, 0.5))), 0.01);
        }
        // All of the housing but what is told as left.
        Assert.All(Offset.Of(RoundCutter.Cleared([jig.Housing], cutter / 2), -0.05).SelectMany(c => c.Flattened()), p => Assert.Contains(cut, c => c.Holds(p)));
    }

    [Fact]
    public void The_wood_at_a_corner_is_rounded_by_what_a_circle_of_the_offset_leaves_of_it()
    {
        var jig = Tread();
        // The wedge's room steps down square from the tread's underside: 9 (sqrt 2 - 1).
        Assert.Contains(jig.Rounded, r => Math.Abs(r.By - 9 * (Math.Sqrt(2) - 1)) < 0.001);
    }

    [Fact]
    public void A_riser_too_narrow_for_the_cutter_has_no_jig_and_it_is_said()
    {
        var rod = RodJobs.Of("straight-flight") with { Router = new() { HandCutter = 24, Bush = 40 } };
        Assert.DoesNotContain(Jigs.Of(rod), j => j.Name == "jig-riser");
        Assert.Contains("no jig for riser and wedge: a cutter of 24 mm does not go into the housing", Jigs.Missing(rod));
        Assert.Empty(Jigs.Missing(RodJobs.Of("straight-flight")));
    }

    [Theory]
    [InlineData("straight-flight")]
    [InlineData("feet-and-inches")]
    [InlineData("half-scale-teaching")]
    public void Jigs_pass_the_audit_and_hold_opening_plate_and_housing(string sample)
    {
        var rod = RodJobs.Of(sample);
        var files = Jigs.Files(rod).ToList();
        Assert.NotEmpty(files);
        foreach (var (name, drawing) in DxfReader.Read(files))
        {
            Assert.Empty(drawing.Errors);
            var jig = Jigs.Of(rod).Single(j => j.Name + ".dxf" == name);
            var opening = Assert.Single(drawing.Paths, p => p.Layer == "JIG-OPENING").Path;
            Assert.Equal(jig.Opening[0].Area, opening.Area, 0.5);
            Assert.Contains(drawing.Paths, p => p.Layer == "JIG-LINES" && Math.Abs(p.Path.Length - jig.Housing.Length) < 0.01);
            Assert.Single(drawing.Paths, p => p.Layer == "JIG-PLATE");
        }
    }

    [Theory]
    [InlineData("straight-flight", "A4")]
    [InlineData("straight-flight", "A3")]
    [InlineData("feet-and-inches", "Tabloid")]
    public void The_sheets_have_no_faults_and_state_the_offset_and_its_formula(string sample, string paper)
    {
        var rod = RodJobs.Of(sample, paper);
        var sheets = TemplateSheets.Make(rod).Where(s => s.Name.StartsWith("template-jig", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, sheets.Count);
        Assert.All(sheets, s => Assert.Empty(SheetCheck.Overlaps(s)));
    }
}
