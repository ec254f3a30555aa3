using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Xunit;
using static Rodwright.Stairs.Tests.Bench;

namespace Rodwright.Stairs.Tests.Plans;

/// <summary>Layouts of more than one quarter turn, against what can be worked out by hand.</summary>
public sealed class HalfTurnTests
{
    private static readonly Turn Kites = Winders(6, 30) with { Quarters = 2 };

    [Fact]
    public void The_walking_line_of_a_half_turn_is_half_a_circle_and_both_offsets()
    {
        var turn = Turned(2600, 225, 4, Kites, 4).Plan().Turns.Single();
        Assert.Equal(414, turn.WalkingRadius, 9);
        Assert.Equal(30 + Math.PI * 414 + 30, turn.Path.Length, 9);
        Assert.Equal((Math.PI * 414 + 60) / 6, turn.Steps.Average(s => s.GoingArc), 9);
    }

    [Fact]
    public void Six_narrow_ends_share_three_faces_of_the_newel()
    {
        // M = 3 x 2h + e_in + e_out - the part of the outer faces beyond the centre: 4h + 60 round a newel of 90.
        var steps = Turned(2600, 225, 4, Kites, 4).Plan().Turns.Single().Steps;
        Assert.All(steps, s => Assert.Equal((4 * 45 + 60) / 6.0, s.NarrowAlongFaces, 9));
    }

    [Fact]
    public void Two_quarter_turns_with_nothing_between_are_one_half_turn()
    {
        var kite = Winders(3);
        var apart = Flight(2600, 2, 225) with { Layout = new(Hand.Left, [new Flight(4), kite, kite, new Flight(4)]) };
        var one = Turned(2600, 225, 4, Winders(6) with { Quarters = 2 }, 4);
        Assert.Equal(one.Plan().RiserLines, apart.Plan().RiserLines);
    }

    [Fact]
    public void A_half_turn_is_its_own_mirror_and_the_flights_come_back_beside_one_another()
    {
        var plan = Turned(2600, 225, 4, Kites, 4).Plan();
        var n = plan.Risers;
        for (var k = 1; k <= n; k++)
        {
            Assert.True(plan.Riser(k).Outer.Mirrored.DistanceTo(plan.Riser(n + 1 - k).Outer) < 1e-6);
            Assert.True(plan.Riser(k).Inner.Mirrored.DistanceTo(plan.Riser(n + 1 - k).Inner) < 1e-6);
        }
    }

    [Fact]
    public void A_half_landing_is_one_step_as_wide_as_both_flights()
    {
        var plan = Turned(2600, 225, 6, Landing with { Quarters = 2 }, 6).Plan();
        Assert.Equal(14, plan.Risers);
        Assert.Single(plan.Steps, s => s == StepKind.Landing);
        // Clear width each, and the strings side by side with 4 between: 2 x 796 + 32 + 4 + 32.
        Assert.Equal(2 * 796 + 68, plan.Riser(1).Outer.X - plan.Riser(14).Outer.X, 9);
    }

    [Fact]
    public void A_turn_to_the_other_hand_keeps_the_width_and_leaves_the_first_flights_direction()
    {
        var job = Flight(2600, 2, 225) with { Layout = new(Hand.Left, [new Flight(3), Landing, new Flight(4), Landing with { Hand = Hand.Right }, new Flight(3)]) };
        var plan = job.Plan();
        Assert.Equal(new(0, 1), plan.Flights[0].Along);
        Assert.Equal(new(-1, 0), plan.Flights[1].Along);
        Assert.Equal(new(0, 1), plan.Flights[2].Along);
        Assert.All(plan.RiserLines, r => Assert.InRange(r.Inner.DistanceTo(r.Outer), 796 - 29 - 1e-9, 796 + 1e-9));
        Assert.Equal([Hand.Left, Hand.Right], plan.Turns.Select(t => t.Hand));
        Assert.False(plan.IsInner(plan.Turns[1]));
    }

    [Theory]
    [InlineData("balanced-progression")]
    [InlineData("balanced-scale")]
    [InlineData("balanced-harrow")]
    [InlineData("balanced-angle")]
    [InlineData("balanced-equal")]
    public void Balanced_steps_all_have_the_flights_going_on_the_walking_line(string method)
    {
        var plan = Turned(2600, 225, 4, Winders(3, null, method) with { SharedBefore = 2, SharedAfter = 2 }, 5).Plan();
        Assert.Equal(7, plan.Turns.Single().Steps.Length);
        Assert.All(plan.Turns.Single().Steps, s => Assert.Equal(225, s.GoingChord, 6));
    }

    [Fact]
    public void A_stair_of_balanced_steps_mirrors_into_its_right_hand()
    {
        var left = Turned(2600, 225, 4, Winders(3, null, "balanced-harrow") with { SharedBefore = 2, SharedAfter = 1 }, 5).Plan();
        var right = left.Mirrored();
        Assert.All(left.RiserLines.Zip(right.RiserLines), p => Assert.True(p.First.Inner.Mirrored.DistanceTo(p.Second.Inner) < 1e-9 && p.First.Outer.Mirrored.DistanceTo(p.Second.Outer) < 1e-9));
        Assert.Equal(left.Turns.Single().Frame.World(new(100, 200)).Mirrored, right.Turns.Single().Frame.World(new(100, 200)));
    }
}
