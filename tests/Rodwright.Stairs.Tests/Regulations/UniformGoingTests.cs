using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Regulations;

/// <summary>Goings of straight steps where a stair turns to one hand and then to the other: the walking line crosses the flight between at a slant.</summary>
public sealed class UniformGoingTests
{
    /// <summary>Left and then right, with two goings between, measured 12 inches from either inner side.</summary>
    private static StairPlan LeftThenRight(string regulation, int between)
    {
        var (left, right) = (Bench.Winders(3, 60), Bench.Winders(3, 60) with { Hand = Hand.Right });
        var job = Bench.Flight(2600, 2, 254) with { Width = 1070, Layout = new(Hand.Left, [new Flight(2), left, new Flight(between), right, new Flight(2)]) };
        return job.Plan(regulation);
    }

    [Theory]
    [InlineData("usa-irc-2021", 1)]
    [InlineData("usa-irc-2021", 2)]
    [InlineData("usa-irc-2021", 4)]
    [InlineData("din-18065-2020", 3)]
    [InlineData("england-2013-private", 3)]
    public void The_slant_of_the_walking_line_is_no_difference(string regulation, int between)
    {
        var plan = LeftThenRight(regulation, between);
        Assert.Equal(0, Assert.Single(UniformGoingRule.Instance.Measure(plan)).Value, 6);
        Assert.Equal(0, Assert.Single(UniformGoingRule.Instance.Measure(plan.Mirrored())).Value, 6);
        for (var k = 1; k < plan.Risers; k++)
            if (plan.Steps[k - 1] == StepKind.Straight) Assert.Equal(254, StraightSteps.Going(plan, k), 6);
    }

    [Fact]
    public void The_line_does_cross_from_one_side_to_the_other_under_a_fixed_inset()
    {
        var plan = LeftThenRight("usa-irc-2021", 2);
        var flight = plan.Flights[1];
        Assert.True(plan.Riser(flight.FirstRiser).Walking.DistanceTo(plan.Riser(flight.LastRiser).Walking) > 2 * 254 + 100);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void A_riser_that_stands_off_its_place_is_one_wherever_it_stands(int flight)
    {
        var plan = LeftThenRight("usa-irc-2021", 3);
        var number = plan.Flights[flight].FirstRiser + 1;
        var off = plan.Riser(number) with { Walking = plan.Riser(number).Walking + 6 * plan.Riser(number).Up };
        var moved = plan with { RiserLines = plan.RiserLines.SetItem(number - 1, off) };
        Assert.Equal(12, Assert.Single(UniformGoingRule.Instance.Measure(moved)).Value, 6);
        Assert.Equal(CheckOutcome.Fail, moved.Check("uniform-going").Outcome);
    }

    [Fact]
    public void The_sample_that_turns_both_ways_keeps_it_under_a_fixed_inset_too()
    {
        var plan = Planner.SetOut(Samples.Job("left-then-right") with { Regulation = "usa-irc-2021" }, RegulationCatalogue.Find("usa-irc-2021")!).Value!;
        Assert.Equal(CheckOutcome.Pass, plan.Check("uniform-going").Outcome);
    }
}
