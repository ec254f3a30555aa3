using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Jobs;
using Xunit;

namespace Rodwright.Joinery.Tests.Strings;

/// <summary>Check values of the setting-out rules, sections 3 to 5, and of trade-practice.md 1c, 3 and 4b.</summary>
public class StringCheckValueTests
{
    private static Stair Stair(Func<Job, Job>? change = null)
    {
        var job = new Job
        {
            Title = "check", Regulation = "england-2013-private", Survey = new() { FloorToFloor = [2600] }, Going = 225, Width = 860,
            Layout = new(Hand.Left, [new Flight(2), new Turn(TurnKind.Winders, 3, null, null, "equal-goings"), new Flight(7)]), Sides = Sides.For(Hand.Left),
        };
        return Joinery.Stair.SetOut((change ?? (j => j))(job)).Value!;
    }

    [Fact]
    public void A_string_for_rise_200_and_going_225_needs_about_268()
    {
        // setting-out.md 3: R 200, G 225, tread 22, riser 12, margin 50, wedges as section 4: about 268. By hand: the tread wedge's end, 37 behind the riser
        // and 22 + 4 + 187/14 below the tread below, lies (37 sin p + 239.357 cos p) = 203.5 from the margin line; 50 + 203.5 + 15.
        var p = Angle.OfPitch(200, 225);
        var low = 37 * p.Sine + (200 + 22 + 4 + 187.0 / 14) * p.Cosine;
        Assert.All(Stair().Kit.Strings, s => Assert.Equal(50 + low + 15, s.LeastWidth, 0.001));
        Assert.InRange(Stair().Kit.Strings[0].LeastWidth, 267.5, 268.9);
    }

    [Fact]
    public void The_margin_line_of_a_symmetric_kite_reaches_the_corner_half_way_up_its_rise()
    {
        // trade-practice.md 3 (derived): margin line at the corner = (k + 1/2) R above the floor, k the kite's number.
        var stair = Stair();
        var lower = stair.Kit.Strings[0];
        var corner = lower.Site.Upper.At;
        var (a, b) = (lower.PitchPoints.Last(q => q.At.X < corner), lower.PitchPoints.First(q => q.At.X > corner));
        Assert.Equal(4, a.Riser);
        var z = a.At.Y + (b.At.Y - a.At.Y) * (corner - a.At.X) / (b.At.X - a.At.X);
        Assert.Equal(4.5 * 200, z, 0.001);
    }

    [Fact]
    public void Both_boards_reach_the_corner_at_one_height_and_the_upper_is_let_in_by_12()
    {
        var stair = Stair();
        var (lower, upper) = (stair.Kit.Strings[0], stair.Kit.Strings[1]);
        Assert.Equal(GraphCut.HeightAt(lower.UpperEdge, lower.Site.Upper.At), GraphCut.HeightAt(upper.UpperEdge, upper.Site.Lower.At), 1e-9);
        Assert.Equal(GraphCut.HeightAt(lower.LowerEdge, lower.Site.Upper.At), GraphCut.HeightAt(upper.LowerEdge, upper.Site.Lower.At), 1e-9);
        Assert.Equal(upper.Site.Lower.At - 12, upper.Outline.Bounds.MinX, 1e-9);
        Assert.Equal(lower.Site.Upper.At + 32, lower.Outline.Bounds.MaxX, 1e-9);
    }

    [Fact]
    public void Easings_are_tangent_arcs_of_150_where_nothing_pinches()
    {
        foreach (var easing in Stair().Kit.Strings[0].Easings.Where(e => e.Edge == "upper"))
        {
            Assert.Equal(150, easing.Tangent, 1e-9);
            Assert.Equal(150 / Angle.Tan(Math.Abs(easing.Turn.Radians) / 2), easing.Radius, 1e-6);
        }
    }

    [Theory]
    [InlineData(36.87, 20.63, 1051.3, 298.0, 10.65)]
    [InlineData(36.87, 0, 450.0, 289.6, 24.34)]
    public void Tangent_arcs_have_the_published_radius_length_and_depth(double steep, double flat, double radius, double length, double depth)
    {
        // trade-practice.md 3 (derived): T 150; radius T/tan(d/2), arc radius*d, depth at the vertex radius*(sec(d/2) - 1).
        var edge = new EdgeLine(
            [new(0, 0), new(1000 * Angle.FromDegrees(steep).Cosine, 1000 * Angle.FromDegrees(steep).Sine),
             new(1000 * (Angle.FromDegrees(steep).Cosine + Angle.FromDegrees(flat).Cosine), 1000 * (Angle.FromDegrees(steep).Sine + Angle.FromDegrees(flat).Sine))], [0, 0]);
        var easings = new List<Easing>();
        var path = edge.Eased(0, 1000 * (Angle.FromDegrees(steep).Cosine + Angle.FromDegrees(flat).Cosine), 150, "upper", (_, _, _) => true, easings);
        var easing = Assert.Single(easings);
        Assert.Equal(radius, easing.Radius, 0.3);
        var (a, b, bulge) = path.Edge(1);
        Assert.Equal(length, Arc2.FromBulge(a, b, bulge).Length, 0.1);
        Assert.Equal(depth, path.DistanceTo(easing.Corner), 0.02);
    }

    [Fact]
    public void A_28_string_with_a_12_housing_leaves_a_16_tenon_and_a_69_newel_takes_46_of_it()
    {
        // T3 of trade-practice.md 11: Goring, Manual of Purpose-Made Woodworking Joinery, p. 111: 28 string, 12 taken off, tenon 16; two thirds of the newel.
        var stair = Stair(j => j with
        {
            Layout = new(Hand.Left, [new Flight(12)]),
            Practice = j.Practice with { Newel = 69, NewelString = new(28, 270) },
        });
        var tenon = stair.Kit.Strings.SelectMany(s => s.Tenons).First(t => !t.IsUpper);
        Assert.Equal(16, tenon.Thickness, 1e-9);
        Assert.Equal(46, tenon.Length, 1e-9);
        // Shoulder half the newel behind the riser's face: 34.5.
        Assert.Equal(34.5, tenon.Shoulder, 1e-9);
    }

    [Fact]
    public void The_usable_band_of_a_tenon_is_level_and_inside_the_board()
    {
        // setting-out.md 5: depth = width/cos p - length tan p, down from the upper edge at the shoulder at an upper end.
        var stair = Stair(j => j with { Layout = new(Hand.Left, [new Flight(12)]) });
        var f = stair.Kit.Strings.First(s => !s.Site.IsWall);
        var tenon = f.Tenons.First(t => t.IsUpper);
        var p = stair.Plan.Pitch;
        Assert.Equal(270 / p.Cosine - tenon.Length * p.Tangent, tenon.Top - tenon.Bottom, 1e-6);
        Assert.Equal(GraphCut.HeightAt(f.UpperEdge, tenon.Shoulder), tenon.Top, 1e-6);
    }

    [Fact]
    public void Where_two_mortices_meet_the_incoming_tenon_is_shortened_to_26()
    {
        // setting-out.md 5: h - t/2 - 3 = 45 - 16 - 3, for a landing, whose two bands overlap in height.
        var stair = Stair(j => j with { Layout = new(Hand.Left, [new Flight(5), new Turn(TurnKind.Landing, 1, null, null, ""), new Flight(6)]) });
        var tenon = stair.Kit.Strings.SelectMany(s => s.Tenons).Single(t => t.IsUpper && t.Newel == "newel-turn");
        Assert.Equal(26, tenon.Length, 1e-9);
    }

    [Fact]
    public void The_rise_of_90_and_going_of_110_pitch_at_39_29_degrees() =>
        Assert.Equal(39.29, Angle.OfPitch(90, 110).Degrees, 0.005); // common practice, setting-out.md 3

    [Fact]
    public void A_string_too_narrow_is_found_with_the_width_that_would_do_and_still_drawn()
    {
        var stair = Stair(j => j with { Practice = j.Practice with { WallString = new(32, 240) } });
        var finding = stair.Findings.First(f => f.Code == "RW4001");
        Assert.Contains("268.5", finding.Message);
        Assert.Contains("270", finding.Hint);
        Assert.True(stair.Prove().Holds);
    }
}
