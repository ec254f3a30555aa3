using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class RegionTests
{
    private static double Area(IReadOnlyList<Path2> paths) => paths.Sum(p => p.Area);

    [Fact]
    public void Two_rectangles_that_overlap_become_one_outline()
    {
        var union = Region.Union([Path2.Rectangle(0, 0, 100, 50), Path2.Rectangle(50, 20, 150, 80)]);
        var outline = Assert.Single(union);
        Assert.Equal(5000 + 6000 - 50 * 30, outline.Area, 9);
        Assert.Equal(8, outline.Vertices.Length);
    }

    [Fact]
    public void Rectangles_apart_stay_two()
    {
        var union = Region.Union([Path2.Rectangle(0, 0, 10, 10), Path2.Rectangle(20, 0, 30, 10)]);
        Assert.Equal(2, union.Count);
        Assert.All(union, p => Assert.Equal(100, p.Area, 9));
    }

    [Theory]
    [InlineData(1e-13, 0)]
    [InlineData(1e-13, 1e-13)]
    [InlineData(-2e-13, 3e-10)]
    [InlineData(5e-8, 0)]
    public void A_corner_that_two_outlines_share_but_for_rounding_is_kept(double x, double y)
    {
        // The end of a board whose top edge slopes, and a housing that ends where it does.
        var board = Path2.Polygon(new(493, 0), new(493, 120), new(-844 + x, 401 + y), new(-884, 401), new Point2(-884, 102), new(-844, 102));
        var housing = Path2.Polygon(new(-844, 102), new(-844, 401), new(-884, 401), new Point2(-884, 102));
        var union = Assert.Single(Region.Union([board, housing]));
        Assert.Equal(Math.Abs(board.Area), union.Area, 1e-3);
        Assert.Equal(6, union.Vertices.Length);
        Assert.Equal(6, Assert.Single(Region.Union([housing, board])).Vertices.Length);
    }

    [Fact]
    public void A_turn_made_in_two_short_steps_is_not_lost()
    {
        // Either step alone turns so little on so short an edge that it seems to lie in line.
        var ring = Path2.Polygon(new(0, 0), new(1000, 0), new(1000 + 2e-7, 1e-9), new(2000, 10), new Point2(2000, 500), new(0, 500));
        Assert.Equal(ring.Area, Assert.Single(Region.Union([ring])).Area, 1e-3);
    }

    [Fact]
    public void What_is_thinner_than_two_points_can_be_apart_is_nothing()
    {
        var whole = Path2.Rectangle(0, 0, 1000, 20 + 5e-8);
        Assert.Empty(Region.Difference(whole, Path2.Rectangle(-10, -10, 1010, 20)));
        // The same with an arc about, which is read another way.
        Assert.Empty(Region.Difference(whole, new Path2([new(new(-10, -10), 0.1), new(new(1010, -10)), new(new(1010, 20)), new(new(-10, 20))], true)));
        Assert.Equal(50, Assert.Single(Region.Difference(whole, Path2.Rectangle(-10, -10, 1010, 19.95))).Area, 1e-4);
    }

    [Fact]
    public void A_hole_runs_clockwise()
    {
        var rest = Region.Difference(Path2.Rectangle(0, 0, 100, 100), Path2.Rectangle(40, 40, 60, 60));
        Assert.Equal(2, rest.Count);
        Assert.Equal(10000, rest[0].Area, 9);
        Assert.Equal(-400, rest[1].Area, 9);
    }

    [Fact]
    public void Nothing_is_left_of_what_is_covered() =>
        Assert.Empty(Region.Difference(Path2.Rectangle(10, 10, 20, 20), Path2.Rectangle(0, 0, 100, 100)));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(10, 20)]
    [InlineData(-3000.5, 812.25)]
    public void A_circle_comes_back_a_circle(double x, double y)
    {
        var circle = Assert.Single(Region.Union([Path2.Circle(new(x, y), 45)]));
        Assert.Equal(Math.PI * 45 * 45, circle.Area, 6);
        Assert.Equal(2, circle.Vertices.Length);
    }

    [Fact]
    public void An_arc_of_more_than_half_a_turn_comes_back_the_long_way_round()
    {
        var keyhole = new Path2([new(new(0, 0), 2.5), new(new(20, 0)), new(new(20, 30)), new(new(0, 30))], true);
        var back = Assert.Single(Region.Union([keyhole]));
        Assert.Equal(keyhole.Area, back.Area, 6);
        Assert.Equal(keyhole.Length, back.Length, 6);
        Assert.Equal(2.5, back.Vertices.Max(v => v.Bulge), 9);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(1e-5)]
    [InlineData(2e-8)]
    public void A_straight_side_between_two_points_of_an_arc_stays_straight(double bulge)
    {
        // Shallow segments: chord 200, sagitta 10 or less, so that the chord is under half the radius.
        var segment = new Path2([new(new(0, 0), bulge), new(new(200, 0))], true);
        var back = Assert.Single(Region.Union([segment]));
        Assert.Equal(segment.Area, back.Area, 6);
        Assert.Equal(1, back.Vertices.Count(v => v.Bulge != 0));
        Assert.Equal(1, back.Vertices.Count(v => v.Bulge == 0));
    }

    [Theory]
    [InlineData(2e-8)]
    [InlineData(-3e-7)]
    [InlineData(1e-5)]
    public void An_arc_whose_centre_lies_thousands_of_kilometres_off_comes_back_an_arc(double bulge)
    {
        var path = new Path2([new(new(880, 0), bulge), new(new(312, 288)), new(new(-256, 729)), new(new(-683, 19), bulge), new(new(627, -358))], true);
        var back = Assert.Single(Region.Union([path]));
        Assert.Equal(path.Vertices.Length, back.Vertices.Length);
        Assert.All(back.Vertices.Where(v => v.Bulge != 0), v => Assert.Equal(1, v.Bulge / bulge, 1e-4));
        Assert.Equal(2, back.Vertices.Count(v => v.Bulge != 0));
    }

    [Fact]
    public void Arcs_cut_through_keep_what_is_left_of_them()
    {
        // Half of a circle of radius 50 is left: an arc of a half turn and a straight side.
        var half = Assert.Single(Region.Difference(Path2.Circle(new(0, 0), 50), Path2.Rectangle(-60, 0, 60, 60)));
        Assert.Equal(Math.PI * 2500 / 2, half.Area, 0.01);
        Assert.Contains(half.Vertices, v => Math.Abs(v.Bulge - 1) < 1e-3);
    }

    [Fact]
    public void An_arc_in_what_is_taken_away_runs_the_other_way_in_what_is_left()
    {
        var rest = Assert.Single(Region.Difference(Path2.Rectangle(0, 0, 100, 100), Path2.Circle(new(100, 50), 20)));
        Assert.Equal(10000 - Math.PI * 400 / 2, rest.Area, 0.01); // the cut falls within a chord, and that chord's rest stays straight
        // The half circle is two quarters: a circle is described as two arcs that meet in the middle of it.
        Assert.Equal(2, rest.Vertices.Count(v => Math.Abs(v.Bulge + Angle.Tan(Math.PI / 8)) < 0.02));
    }

    [Fact]
    public void One_outline_alone_is_its_own_union_arcs_and_all() =>
        Shapes.Outlines.Holds(path =>
        {
            var union = Region.Union([path]);
            return union.Count == 1 && Math.Abs(union[0].Area - path.Area) < 1e-3 && Math.Abs(union[0].Length - path.Length) < 1e-5;
        }, iter: 60);

    [Fact]
    public void Union_and_difference_together_make_up_both_areas() =>
        Gen.Select(Shapes.Outlines, Shapes.Outlines, Gen.Double[0, 1200], Shapes.Directions).Holds((a, other, apart, direction) =>
        {
            var b = other.Moved(a.Bounds.Centre + apart * Vector2.At(direction) - other.Bounds.Centre);
            // Arcs cut across differ from their chords by at most the chord's tolerance along their length.
            return Math.Abs(Area(Region.Union([a, b])) - Area(Region.Difference(a, b)) - b.Area) < 0.01 * (a.Length + b.Length);
        }, iter: 60);

    [Fact]
    public void A_union_does_not_depend_on_the_order() =>
        Gen.Select(Shapes.Outlines, Shapes.Outlines, Gen.Double[0, 900]).Holds((a, other, apart) =>
        {
            var b = other.Moved(a.Bounds.Centre + new Vector2(apart, 0) - other.Bounds.Centre);
            return Math.Abs(Area(Region.Union([a, b])) - Area(Region.Union([b, a]))) < 1e-3;
        }, iter: 60);
}
