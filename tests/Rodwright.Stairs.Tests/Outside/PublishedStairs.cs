using Rodwright.Stairs.Plans;
using Xunit;
using static Rodwright.Stairs.Tests.Bench;

namespace Rodwright.Stairs.Tests.Outside;

/// <summary>Printed stairs set out as jobs: rise, pitch, runs and heights come from the plan and its report.</summary>
public sealed class PublishedStairs
{
    /// <summary>From the first riser's face to the last's, along the flight.</summary>
    private static double Run(StairPlan plan) => plan.RiserLines[^1].Walking.Y - plan.RiserLines[0].Walking.Y;

    [Fact]
    public void Goring_fig_6_27_p_102_loft_stair_of_2950_in_sixteen_risers_going_220()
    {
        var plan = Flight(2950, 16, 220).Plan();
        Assert.Equal(184.37, plan.Rise, 0.0051);
        Assert.Equal(588.74, plan.Check("two-rise-and-going").Measured!.Value, 0.011);
        Assert.Equal(40, plan.Pitch.Degrees, 0.05);
    }

    [Fact]
    public void Goring_fig_6_27_p_102_its_tapered_steps_of_235_pitch_at_38_degrees()
    {
        // Twelve straight steps and three tapered: sixteen risers. The printed 603.74 means tapered goings of 235.
        var plan = Turned(2950, 220, 6, Winders(3), 6).Plan().WithSteps(s => s with { GoingChord = 235 });
        Assert.Equal(16, plan.Risers);
        Assert.Equal(38, plan.Check("tapered-pitch").Measured!.Value, 0.15);
        Assert.Equal(603.74, plan.WithoutStraight().Check("two-rise-and-going").Measured!.Value, 0.011);
    }

    [Fact]
    public void Army_subcourse_EN5156_fig_2_38_twelve_treads_of_ten_and_a_half_run_ten_feet_six()
    {
        var plan = Flight(94 * Inch, 13, 10.5 * Inch).Plan();
        Assert.Equal(12, plan.CarriedSteps.Count());
        Assert.Equal(126 * Inch, Run(plan), 6);
    }

    [Fact]
    public void Radford_Cyclopedia_vol_3_fig_71_sixteen_treads_run_twelve_feet_eight()
    {
        var plan = Flight((10 * 12 + 3) * Inch, 17, 9.5 * Inch).Plan();
        Assert.Equal(16, plan.CarriedSteps.Count());
        Assert.Equal(152 * Inch, Run(plan), 6);
        Assert.Equal(7.235 * Inch, plan.Rise, 0.02);
    }

    [Fact]
    public void Hodgson_and_Williams_fig_33_eleven_treads_of_nine_and_a_half_run_eight_feet_eight_and_a_half()
    {
        var plan = Flight(84 * Inch, 12, 9.5 * Inch).Plan();
        Assert.Equal(7 * Inch, plan.Rise, 9);
        Assert.Equal((8 * 12 + 8.5) * Inch, Run(plan), 6);
    }

    [Fact]
    public void Rivington_fig_201_flights_of_ten_risers_run_seven_feet_six_and_rise_six_and_a_half()
    {
        // Each flight of the dog-leg: 9 treads of 10 in, half of 10 ft 10 in.
        var plan = Flight(65 * Inch, 10, 10 * Inch).Plan();
        Assert.Equal(6.5 * Inch, plan.Rise, 9);
        Assert.Equal(90 * Inch, Run(plan), 6);
    }

    [Fact]
    public void Rivington_fig_204_nineteen_steps_of_seven_climb_eleven_feet_one()
    {
        var plan = Flight(133 * Inch, 19, 9 * Inch).Plan();
        Assert.Equal(7 * Inch, plan.Rise, 9);
        // "6 x 9 = 4 ft 6 in": six goings on.
        Assert.Equal(54 * Inch, plan.Riser(7).Walking.Y, 6);
    }

    [Fact]
    public void Rivington_footnote_ten_feet_ten_over_nineteen_is_six_and_sixteen_nineteenths() =>
        Assert.Equal((6 + 16.0 / 19) * Inch, Flight(130 * Inch, 19, 9 * Inch).Plan().Rise, 9);

    [Fact]
    public void French_Elemens_p_8_five_feet_in_nine_risers_and_seven_feet_in_eight_goings()
    {
        // 12 lines to the inch, an inch of 27.07 mm: rise 6 in 8 lines, going 10 in 6 lines, set off on the middle line.
        const double pouce = 27.07;
        var plan = Flight(60 * pouce, 9, (10 + 6.0 / 12) * pouce).Plan();
        Assert.Equal((6 + 8.0 / 12) * pouce, plan.Rise, 9);
        Assert.Equal(84 * pouce, Run(plan), 9);
    }

    [Fact]
    public void Teaching_set_1050_in_six_risers_has_five_goings_of_290_and_a_pace_of_640()
    {
        var plan = Flight(1050, 6, 290).Plan();
        Assert.Equal(5, plan.CarriedSteps.Count());
        Assert.Equal(1450, Run(plan), 9);
        Assert.Equal(640, plan.Check("two-rise-and-going").Measured!.Value, 9);
    }

    [Fact]
    public void Stairmaking_example_8_2_a_flight_of_eight_rises_of_171_climbs_1368_and_runs_2030()
    {
        var plan = Flight(1368, 8, 290).Plan("usa-irc-2021");
        Assert.Equal(171, plan.Rise, 9);
        Assert.Equal(1368, plan.Check("flight-rise").Measured!.Value, 9);
        Assert.Equal(2030, Run(plan), 9);
    }

    [Fact]
    public void Stairmaking_examples_8_3_to_8_6_step_the_string_at_325_and_rise_180()
    {
        var plan = Flight(1620, 9, 270).Plan();
        Assert.Equal(180, plan.Rise, 9);
        // The book prints c = 325: from one pitch point to the next, along the margin line.
        Assert.Equal(325, plan.Going / plan.Pitch.Cosine, 0.51);
    }

    [Fact]
    public void Viollet_le_Duc_thirty_goings_of_25_to_30_cm_develop_to_seven_and_a_half_to_nine_metres()
    {
        // He counts one going to every step.
        Assert.Equal(7500, Run(Flight(4650, 31, 250).Plan()), 6);
        Assert.Equal(9000, Run(Flight(4650, 31, 300).Plan()), 6);
    }

    [Fact]
    public void Goring_pp_105_111_125_the_riser_face_lies_on_the_newels_centre()
    {
        var plan = Turned(2600, 225, 4, Landing, 5).Plan();
        Assert.Equal(plan.Newels[0].Centre.Y, plan.Riser(1).Inner.Y, 9);
        Assert.Equal(plan.Turn!.Centre.Y, plan.Riser(plan.Turn.FirstLine).Inner.Y, 9);
        Assert.Equal(plan.Turn.Centre.X, plan.Riser(plan.Turn.LastLine).Inner.X, 9);
    }
}

file static class Without
{
    /// <summary>The plan with its straight steps left out of what is measured.</summary>
    public static StairPlan WithoutStraight(this StairPlan plan) =>
        plan with { Steps = [.. plan.Steps.Select(s => s == StepKind.Straight ? StepKind.Floor : s)] };
}
