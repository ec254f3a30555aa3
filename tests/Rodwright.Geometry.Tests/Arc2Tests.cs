using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class Arc2Tests
{
    [Fact]
    public void A_bulge_of_one_is_half_a_circle_on_the_right_of_its_chord()
    {
        var arc = Arc2.FromBulge(new(0, 0), new(10, 0), 1);
        Assert.Equal(5, arc.Radius, 12);
        Assert.True(arc.Centre.IsSame(new(5, 0)));
        Assert.Equal(Math.PI, arc.Sweep, 12);
        Assert.True(arc.At(0.5).IsSame(new(5, -5)));
        Assert.Equal(5 * Math.PI, arc.Length, 12);
    }

    [Fact]
    public void A_quarter_circle_has_the_bulge_of_an_eighth_turns_tangent_halved()
    {
        // tan(90/4 degrees) = sqrt(2) - 1.
        var arc = Arc2.FromBulge(new(1, 0), new(0, 1), Math.Sqrt(2) - 1);
        Assert.True(arc.Centre.IsSame(Point2.Origin));
        Assert.Equal(1, arc.Radius, 12);
        Assert.Equal(Math.PI / 2, arc.Sweep, 12);
    }

    [Fact]
    public void A_negative_bulge_runs_clockwise_on_the_left_of_its_chord()
    {
        var arc = Arc2.FromBulge(new(0, 0), new(10, 0), -1);
        Assert.Equal(-Math.PI, arc.Sweep, 12);
        Assert.True(arc.At(0.5).IsSame(new(5, 5)));
    }

    [Fact]
    public void A_bulge_of_zero_is_refused() => Assert.Throws<ArgumentException>(() => Arc2.FromBulge(new(0, 0), new(1, 0), 0));

    [Fact]
    public void Every_arc_starts_and_ends_where_it_was_asked_to() =>
        Gen.Select(Shapes.Chords, Shapes.Bulges).Holds((chord, bulge) =>
        {
            var arc = Arc2.FromBulge(chord.From, chord.To, bulge);
            // An arc a thousand times shallower than its chord has a radius of kilometres: a micron there.
            return arc.At(0).DistanceTo(chord.From) < 1e-6 && arc.At(1).DistanceTo(chord.To) < 1e-6;
        });

    [Fact]
    public void Bulge_is_sagitta_over_half_the_chord() =>
        Gen.Select(Shapes.Chords, Shapes.Bulges).Holds((chord, bulge) =>
        {
            var sagitta = Arc2.FromBulge(chord.From, chord.To, bulge).At(0.5).DistanceTo(chord.From.Towards(chord.To, 0.5));
            return Math.Abs(sagitta - Math.Abs(bulge) * chord.From.DistanceTo(chord.To) / 2) < 1e-6;
        });

    [Fact]
    public void The_bulge_through_a_point_of_an_arc_is_the_arcs_bulge() =>
        Gen.Select(Shapes.Chords, Shapes.Bulges, Gen.Double[0.1, 0.9]).Holds((chord, bulge, part) =>
        {
            var via = Arc2.FromBulge(chord.From, chord.To, bulge).At(part);
            return Math.Abs(Arc2.BulgeThrough(chord.From, via, chord.To) - bulge) < 1e-6 * (1 + Math.Abs(bulge));
        });

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.0001)]
    [InlineData(0.9999)]
    [InlineData(2.0)]
    [InlineData(-1.0)]
    public void Three_points_in_line_have_no_bulge(double part)
    {
        var (from, to) = (new Point2(3, 4), new Point2(203, 104));
        Assert.Equal(0, Arc2.BulgeThrough(from, from.Towards(to, part), to));
    }
}
