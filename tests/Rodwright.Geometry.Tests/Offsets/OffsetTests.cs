using CsCheck;
using Rodwright.Geometry.Offsets;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests.Offsets;

public class OffsetTests
{
    // A comb of three teeth with a round end: a tread, a riser and its wedge look much like it.
    private static Path2 Comb { get; } = new(
    [
        new(new(0, 0)), new(new(90, 0), 1), new(new(90, 22)), new(new(60, 22)), new(new(60, 80)), new(new(48, 80)), new(new(48, 22)), new(new(30, 22)), new(new(30, 60), -0.4), new(new(12, 60)), new(new(12, 22)), new(new(0, 22)),
    ], true);

    private static double Area(IReadOnlyList<Path2> paths) => paths.Sum(p => p.Area);

    [Fact]
    public void A_rectangle_grown_has_round_corners_and_the_area_of_sides_and_a_circle()
    {
        var grown = Assert.Single(Offset.Of(Path2.Rectangle(0, 0, 100, 40), 9));
        Assert.Equal(4000 + 2 * 140 * 9 + Math.PI * 81, grown.Area, 9);
        Assert.Equal(280 + 2 * Math.PI * 9, grown.Length, 9);
        Assert.Equal(8, grown.Vertices.Length);
        Assert.Equal(4, grown.Vertices.Count(v => v.Bulge > 0));
    }

    [Fact]
    public void A_rectangle_shrunk_keeps_its_corners_and_vanishes_at_half_its_width()
    {
        var shrunk = Assert.Single(Offset.Of(Path2.Rectangle(0, 0, 100, 40), -15));
        Assert.Equal(70 * 10, shrunk.Area, 9);
        Assert.Equal(4, shrunk.Vertices.Length);
        Assert.Empty(Offset.Of(Path2.Rectangle(0, 0, 100, 40), -20));
        Assert.Empty(Offset.Of(Path2.Rectangle(0, 0, 100, 40), -21));
    }

    [Fact]
    public void An_arc_stays_an_arc_about_its_centre()
    {
        var grown = Assert.Single(Offset.Of(Path2.Circle(new(5, -3), 45), 10));
        Assert.Equal(Math.PI * 55 * 55, grown.Area, 6);
        Assert.Equal(2, grown.Vertices.Length);
        Assert.Equal(Math.PI * 35 * 35, Area(Offset.Of(Path2.Circle(new(5, -3), 45), -10)), 6);
        Assert.Empty(Offset.Of(Path2.Circle(new(5, -3), 45), -46));
    }

    [Fact]
    public void A_waist_that_is_too_narrow_parts_the_area_in_two()
    {
        var dumbbell = Path2.Polygon(new(0, 0), new(40, 0), new(40, 15), new(60, 15), new(60, 0), new(100, 0), new(100, 40), new(60, 40), new Point2(60, 25), new(40, 25), new(40, 40), new(0, 40));
        Assert.Single(Offset.Of(dumbbell, -4.9));
        Assert.Equal(2, Offset.Of(dumbbell, -5.1).Count);
        Assert.Equal(2, Offset.Of(dumbbell, -5).Count);
    }

    [Fact]
    public void A_mouth_that_closes_leaves_a_hole()
    {
        var jar = Path2.Polygon(new(0, 0), new(100, 0), new(100, 100), new(55, 100), new Point2(55, 80), new(80, 80), new(80, 20), new(20, 20), new(20, 80), new(45, 80), new(45, 100), new(0, 100));
        var grown = Offset.Of(jar, 6);
        Assert.Equal(2, grown.Count);
        // A square, and in the mouth the peak between two circles of 6 that are 10 apart.
        var peak = 2 * (30 - (2.5 * Math.Sqrt(11) + 18 * Math.Asin(5.0 / 6)));
        Assert.Equal(-48 * 48 - peak, grown.Min(p => p.Area), 6);
    }

    [Fact]
    public void What_lies_outside_an_outline_is_shrunk_as_the_outline_grows()
    {
        var outside = Assert.Single(Offset.Of(Comb.Reversed(), -3));
        Assert.Equal(Assert.Single(Offset.Of(Comb, 3)).Area, -outside.Area, 9);
    }

    [Fact]
    public void A_hole_shrinks_as_its_area_grows()
    {
        var ring = new[] { Path2.Rectangle(0, 0, 100, 100), Path2.Rectangle(30, 30, 70, 70).Reversed() };
        Assert.Equal(100 * 100 + 400 * 5 + Math.PI * 25 - 30 * 30, Area(Offset.Of(ring, 5)), 9);
        Assert.Equal(80 * 80 - (40 * 40 + 160 * 10 + Math.PI * 100), Area(Offset.Of(ring, -10)), 9);
    }

    [Fact]
    public void An_open_line_bounds_nothing() => Assert.Throws<ArgumentException>(() => Offset.Of(Path2.Polyline(new(0, 0), new Point2(10, 0)), 3));

    [Fact]
    public void No_distance_changes_nothing() => Assert.Same(Comb, Assert.Single(Offset.Of(Comb, 0)));

    /// <summary>The definition itself: the edge lies at the distance, and what is nearer lies within.</summary>
    [Fact]
    public void Every_point_of_the_edge_lies_at_the_distance_and_every_point_is_on_its_own_side() =>
        Gen.Select(Shapes.Outlines, Gen.Double[-250, 250], Gen.Int[0, 10000]).Where((_, by, _) => Math.Abs(by) > 0.5).Holds((outline, by, seed) => Judge(outline, by, seed, 0.006), iter: 300);

    [Fact]
    public void The_same_holds_of_shapes_with_square_corners_slots_and_rounds() =>
        Gen.Select(Gen.Double[-30, 30], Gen.Int[0, 10000]).Where((by, _) => Math.Abs(by) > 0.01).Holds((by, seed) => Judge(Comb, by, seed), iter: 300);

    [Theory]
    [InlineData(-6)]
    [InlineData(-11)]
    [InlineData(-9)]
    [InlineData(9)]
    [InlineData(6)]
    [InlineData(11.25)]
    [InlineData(19)]
    public void The_same_holds_at_distances_where_edges_fall_together(double by) => Judge(Comb, by, 7);

    [Fact]
    public void Growing_by_two_distances_is_growing_by_their_sum() =>
        Gen.Select(Shapes.Outlines, Gen.Double[1, 100], Gen.Double[1, 100]).Holds((outline, a, b) =>
            Assert.Equal(Area(Offset.Of(outline, a + b)), Area(Offset.Of(Offset.Of(outline, a), b)), 0.02), iter: 100);

    private static void Judge(Path2 outline, double by, int seed, double near = 1e-5)
    {
        var grown = Offset.Of(outline, by);
        foreach (var path in grown)
            for (var i = 0; i < path.EdgeCount; i++)
            {
                var (a, b, bulge) = path.Edge(i);
                foreach (var part in (double[])[0, 0.13, 0.5, 0.81])
                {
                    var p = bulge == 0 ? a.Towards(b, part) : Arc2.FromBulge(a, b, bulge).At(part);
                    Assert.Equal(Math.Abs(by), outline.DistanceTo(p), near);
                }
            }
        var box = outline.Bounds.Grown(Math.Max(by, 0) + 5);
        var random = new Random(seed);
        for (var i = 0; i < 200; i++)
        {
            var p = new Point2(box.MinX + random.NextDouble() * box.Width, box.MinY + random.NextDouble() * box.Height);
            var away = outline.DistanceTo(p);
            if (Math.Abs(away - Math.Abs(by)) < 0.02 || away < 0.02) continue; // on the edge it may fall either way
            var within = by > 0 ? outline.Holds(p) || away < by : outline.Holds(p) && away > -by;
            Assert.True(within == (grown.Count(g => g.Holds(p)) % 2 == 1), $"{p} lies {away} from the outline, {by} is the distance");
        }
    }
}
