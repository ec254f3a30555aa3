using Rodwright.Geometry;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Turns;
using Xunit;
using static Rodwright.Stairs.Tests.Bench;

namespace Rodwright.Stairs.Tests.Outside;

/// <summary>Printed winders: angles, goings by arc and by chord, narrow ends.</summary>
public sealed class PublishedWinders
{
    [Theory]
    [InlineData(2, 45)]
    [InlineData(3, 30)]
    public void Ontario_code_9_8_4_5_ninety_degrees_are_two_winders_of_45_or_three_of_30(int steps, double angle) =>
        Assert.All(Turned(2600, 225, 4, Winders(steps, 0, "radiating"), 5).Plan().Turn!.Steps, s => Assert.Equal(angle, s.Taper.Degrees, 9));

    [Fact]
    public void Goring_fig_6_49_p_121_a_quarter_divided_by_five_is_18_degrees() =>
        Assert.All(Turned(2600, 225, 4, Winders(5, 0, "radiating"), 5).Plan().Turn!.Steps, s => Assert.Equal(18, s.Taper.Degrees, 9));

    [Fact]
    public void Fine_Homebuilding_117_compasses_strike_the_second_and_third_risers_at_30_and_60_degrees()
    {
        var plan = Turned(2600, 225, 4, Winders(3, 0, "radiating"), 5).Plan();
        var first = plan.Turn!.FirstLine;
        Assert.Equal(30, Angle.FromRadians((plan.Riser(first + 1).Outer - plan.Turn.Centre).Direction).Degrees, 9);
        Assert.Equal(60, Angle.FromRadians((plan.Riser(first + 2).Outer - plan.Turn.Centre).Direction).Degrees, 9);
    }

    [Fact]
    public void Goring_p_125_a_narrow_end_of_50_with_a_nosing_of_22_is_a_tread_72_wide()
    {
        var plan = (Turned(2600, 225, 2, Winders(3, 30), 7) with { Practice = new() { Nosing = 22 } }).Plan();
        Assert.All(plan.Turn!.Steps, s => Assert.Equal(50, s.NarrowAlongFaces, 9));
        Assert.Equal(72, plan.Check("narrow-tread-width").Measured!.Value, 9);
    }

    [Fact]
    public void Rivington_winders_three_in_a_quarter_at_18_inches_tread_nine_and_three_sevenths_by_the_arc()
    {
        var path = new WalkingPath(18 * Inch, 0, 0);
        Assert.Equal((9 + 3.0 / 7) * Inch, path.Length / 3, 0.1);
        // The chord he did not need: 9.317 in.
        Assert.Equal(9.317 * Inch, path.EqualChord(3), 0.013);
    }

    [Fact]
    public void Rivington_winders_four_in_a_quarter_at_18_inches_are_about_7_inches()
    {
        var path = new WalkingPath(18 * Inch, 0, 0);
        Assert.Equal(7.069 * Inch, path.Length / 4, 0.013);
        Assert.Equal(7.023 * Inch, path.EqualChord(4), 0.013);
    }

    [Fact]
    public void Rivington_winders_the_same_measured_on_a_stair_set_out_18_inches_from_the_newels_centre()
    {
        // Clear width such that the middle line is 18 in from the newel's centre.
        var job = Turned(2600, 225, 4, Winders(3, 0, "radiating"), 5);
        var plan = (job with { Width = 2 * (18 * Inch - 16) + 64 }).Plan();
        Assert.Equal(18 * Inch, plan.WalkingRadius, 9);
        Assert.All(plan.Turn!.Steps, s => Assert.Equal(9.4248 * Inch, s.GoingArc, 0.002));
        Assert.All(plan.Turn!.Steps, s => Assert.Equal(9.317 * Inch, s.GoingChord, 0.013));
    }

    [Fact]
    public void Hasluck_ch_XII_winders_divide_the_line_and_the_inner_side_into_equal_parts()
    {
        // Rule M1: six equal parts on the line of travel and on the narrow line.
        var steps = Turned(2900, 225, 4, Winders(6, 30, "equal-arcs"), 5).Plan().Turn!.Steps;
        Assert.All(steps, s => Assert.Equal(steps[0].GoingArc, s.GoingArc, 6));
        Assert.All(steps, s => Assert.Equal(steps[0].NarrowAlongFaces, s.NarrowAlongFaces, 6));
    }
}
