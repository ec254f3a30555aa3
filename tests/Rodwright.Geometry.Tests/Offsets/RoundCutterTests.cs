using CsCheck;
using Rodwright.Geometry.Offsets;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests.Offsets;

public class RoundCutterTests
{
    [Fact]
    public void A_square_corner_keeps_the_square_on_the_radius_less_a_quarter_circle()
    {
        var left = RoundCutter.Left([Path2.Rectangle(0, 0, 200, 100)], 5);
        Assert.Equal(4, left.Length);
        Assert.All(left, l =>
        {
            Assert.Equal(25 - Math.PI * 25 / 4, l.Area, 0.003); // 5.365
            Assert.Equal(5 * (Math.Sqrt(2) - 1), l.Away, 0.001); // 2.071
            Assert.Equal(90, Assert.Single(l.Corners).Opening.Degrees, 9);
            Assert.Equal(5, l.Shape.Bounds.Width, 0.002);
        });
        Assert.Contains(left, l => l.Corners[0].At.IsSame(new(200, 100)));
    }

    /// <summary>Two sides that meet at an angle: the circle touches each r / tan(a/2) from the corner, and its centre lies r / sin(a/2) away.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(86)]
    [InlineData(90)]
    [InlineData(94.09)]
    [InlineData(120)]
    [InlineData(150)]
    public void A_corner_of_any_angle_follows_the_formulas(double degrees)
    {
        const double r = 6;
        var half = degrees * Math.PI / 360;
        var left = RoundCutter.Left([Wedge(degrees)], r).Single(l => l.Corners.Any(c => c.At.IsSame(Point2.Origin)));
        var corner = Assert.Single(left.Corners);
        Assert.Equal(degrees, corner.Opening.Degrees, 6);
        Assert.Equal(r * r * (1 / Math.Tan(half) - (Math.PI / 2 - half)), left.Area, 0.04);
        Assert.Equal(r * (1 / Math.Sin(half) - 1), corner.Away, 0.005);
        Assert.Equal(r / Math.Tan(half), left.Shape.Vertices.Max(v => v.At.X * (v.At.Y == 0 ? 1 : 0)), 0.005);
    }

    [Fact]
    public void Corners_agree_with_a_cutter_set_down_everywhere() =>
        Gen.Select(Gen.Double[35, 150], Gen.Double[3, 10]).Holds((degrees, r) =>
        {
            var area = Wedge(degrees);
            var left = RoundCutter.Left([area], r).Single(l => l.Corners.Any(c => c.At.IsSame(Point2.Origin)));
            var box = left.Shape.Bounds;
            // Counted square by square: a point is cleared when some place of the centre, the corner's own circle, is within the radius.
            var (count, cleared, n) = (0, 0, 300);
            var half = degrees * Math.PI / 360;
            var centre = new Point2(r / Math.Sin(half) * Math.Cos(half), r);
            for (var i = 0; i < n; i++)
                for (var j = 0; j < n; j++)
                {
                    var p = new Point2(box.MinX + (i + 0.5) / n * box.Width, box.MinY + (j + 0.5) / n * box.Height);
                    if (!area.Holds(p) || !(p.X * Math.Cos(half) + p.Y * Math.Sin(half) < (r / Math.Sin(half) - r) / 1 + 2 * r)) continue;
                    var beforeTangents = p.X < centre.X && p.X * Math.Cos(2 * half) + p.Y * Math.Sin(2 * half) < centre.X;
                    if (!beforeTangents) continue;
                    count++;
                    if (p.DistanceTo(centre) <= r) cleared++;
                }
            var sampled = (count - cleared) * box.Width * box.Height / (n * n);
            Assert.Equal(sampled, left.Area, 0.02 * left.Area + 0.02);
        }, iter: 40);

    [Fact]
    public void A_groove_as_wide_as_the_cutter_is_cut_by_it_and_a_narrower_one_is_not()
    {
        Assert.Equal([1, 1, 1, 1], RoundCutter.Left([Path2.Rectangle(0, 0, 200, 12)], 6).Select(l => l.Corners.Length)); // at its two ends
        var none = Assert.Single(RoundCutter.Left([Path2.Rectangle(0, 0, 200, 11.9)], 6));
        Assert.Equal(200 * 11.9, none.Area, 6);
        Assert.Equal(4, none.Corners.Length);
        Assert.Equal(double.PositiveInfinity, none.Away);
    }

    [Fact]
    public void A_tongue_of_the_area_that_is_too_narrow_is_left_whole()
    {
        var area = Path2.Polygon(new(0, 0), new(100, 0), new(100, 50), new(60, 50), new(60, 90), new Point2(51, 90), new(51, 50), new(0, 50));
        var left = RoundCutter.Left([area], 5);
        var tongue = Assert.Single(left, l => l.Corners.Length == 2);
        Assert.Equal([60, 51], tongue.Corners.OrderByDescending(c => c.At.X).Select(c => c.At.X));
        // The cutter leans on the mouth's two corners and reaches in by the segment on a chord of 9.
        var half = Math.Asin(4.5 / 5);
        Assert.Equal(9 * 40 - 25 * (half - Math.Sin(half) * Math.Cos(half)), tongue.Area, 0.02);
        Assert.Equal(4, left.Length - 1);
    }

    [Fact]
    public void An_arc_tighter_than_the_cutter_keeps_a_crescent_and_has_no_corner()
    {
        // A slot's end of radius 8, met by straight sides that open: a cutter of radius 12 stops short.
        var area = new Path2([new(new(0, -8), -1), new(new(0, 8)), new(new(100, 60)), new(new(100, -60))], true).Reversed();
        var round = RoundCutter.Left([area], 12).Single(l => l.Shape.Bounds.MinX < 0);
        Assert.Empty(round.Corners);
        Assert.Equal(8, round.Tightest!.Value, 9);
        Assert.True(round.Area > 5);
        Assert.DoesNotContain(RoundCutter.Left([area], 7.9), l => l.Shape.Bounds.MinX < 0);
    }

    [Fact]
    public void Outside_an_outline_the_cutter_leaves_its_notches_alone()
    {
        var notched = Path2.Polygon(new(0, 0), new(100, 0), new(100, 60), new(70, 60), new Point2(70, 40), new(0, 40));
        var left = Assert.Single(RoundCutter.Left([notched.Reversed()], 5));
        Assert.True(Assert.Single(left.Corners).At.IsSame(new(70, 40)));
        Assert.Equal(25 - Math.PI * 25 / 4, left.Area, 0.003);
    }

    [Fact]
    public void Cleared_and_left_together_are_the_area() =>
        Gen.Select(Shapes.Outlines, Gen.Double[3, 60]).Where((outline, _) => outline.Vertices.All(v => v.Bulge == 0 || Math.Abs(v.Bulge) > 2e-5)).Holds((outline, r) =>
            Assert.Equal(outline.Area, RoundCutter.Cleared([outline], r).Sum(p => p.Area) + RoundCutter.Left([outline], r).Sum(l => l.Area), 0.01), iter: 200);

    /// <summary>A kite with its corner of so many degrees at the origin, one side along x, big enough that its other corners are far.</summary>
    private static Path2 Wedge(double degrees)
    {
        var turn = degrees * Math.PI / 180;
        var (a, b) = (new Point2(300, 0), new Point2(300 * Math.Cos(turn), 300 * Math.Sin(turn)));
        return Path2.Polygon(Point2.Origin, a, new(400 * Math.Cos(turn / 2), 400 * Math.Sin(turn / 2)), b);
    }
}
