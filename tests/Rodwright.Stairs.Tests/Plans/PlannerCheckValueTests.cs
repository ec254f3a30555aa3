using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Xunit;

namespace Rodwright.Stairs.Tests.Plans;

/// <summary>The hand-derivable check values of the setting-out rules (section 2.2), to 0.001 mm.</summary>
public class PlannerCheckValueTests
{
    private static StairPlan Plan(Func<Job, Job>? change = null) => Planner.SetOut((change ?? (j => j))(Job), Rules).Value!;

    private static readonly Regulation Rules = new()
    {
        Id = "middle", Title = "measured in the middle", WalkingLine = new(1000, 270, true), Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.AlongFaces, LeastNarrow = 50, TaperedAtLeastStraight = true, LeastGoing = 220,
    };

    private static readonly Job Job = new()
    {
        Title = "check", Regulation = "middle", Survey = new() { FloorToFloor = [2600] }, Going = 225, Width = 860,
        Layout = new(Hand.Left, [new Flight(2), new Turn(TurnKind.Winders, 3, null, null, "equal-goings"), new Flight(7)]),
        Sides = Sides.For(Hand.Left),
    };

    private static Job With(Job job, string method) =>
        job with { Layout = job.Layout with { Sequence = [new Flight(2), new Turn(TurnKind.Winders, 3, 30, 30, method), new Flight(7)] } };

    [Fact]
    public void The_narrow_end_decides_that_the_risers_stand_30_outside_a_90_newels_centre()
    {
        var turn = Plan().Turn!;
        Assert.Equal(30, turn.FirstRiser);
        Assert.Equal(30, turn.LastRiser);
        Assert.Contains("narrow end", turn.DecidedBy);
    }

    [Theory]
    [InlineData(100, 25)]
    [InlineData(120, 15)]
    public void E_is_75_less_half_the_newel_when_three_narrow_ends_of_50_decide(double newel, double e) =>
        Assert.Equal(e, Plan(j => j with { Going = 220, Practice = new() { Newel = newel } }).Turn!.FirstRiser);

    [Fact]
    public void Nothing_fits_in_a_69_newel_and_the_finding_names_a_remedy()
    {
        var outcome = Planner.SetOut(Job with { Practice = new() { Newel = 69 } }, Rules);
        Assert.NotNull(outcome.Value);
        var finding = Assert.Single(outcome.Findings);
        Assert.Equal("RW2101", finding.Code);
        Assert.Contains("newel of", finding.Hint);
        Assert.Equal(24, outcome.Value.Turn!.FirstRiser);
    }

    [Fact]
    public void Walking_line_and_goings_by_chords()
    {
        var plan = Plan();
        Assert.Equal(414, plan.WalkingRadius, 3);
        Assert.All(plan.Turn!.Steps, s => Assert.Equal(233.728, s.GoingChord, 3));
        Assert.All(plan.Turn.Steps, s => Assert.Equal(50, s.NarrowAlongFaces, 3));
        Assert.Equal(35.355, plan.Turn.Steps[1].NarrowStraight, 3);
        Assert.Equal(70, plan.Turn.Steps[1].NarrowTreadWidth, 3);
        Assert.Equal(725.65, plan.Turn.Steps[1].Wide, 2);
        Assert.Equal(710.310, plan.Turn.Steps.Sum(s => s.GoingArc), 3);
    }

    [Theory]
    [InlineData("equal-goings", 449.175)]
    [InlineData("equal-arcs", 449.423)]
    public void The_second_riser_line_of_the_turn(string method, double outerY)
    {
        var plan = Plan(j => With(j, method));
        var line = plan.Riser(4);
        var centre = plan.Turn!.Centre;
        Assert.Equal(45, line.Inner.X, 3);
        Assert.Equal(20, line.Inner.Y - centre.Y, 3);
        Assert.Equal(812, line.Outer.X, 3);
        Assert.Equal(outerY, line.Outer.Y - centre.Y, 3);
        if (method == "equal-arcs") Assert.All(plan.Turn.Steps, s => Assert.Equal(236.770, s.GoingArc, 3));
    }

    [Fact]
    public void Lines_radiating_from_the_newels_centre_leave_it_as_derived()
    {
        // h tan 30 from the face's middle; on the walls D tan 30 (trade-practice.md 1c, D = 828 from the newel's centre).
        var plan = Plan(j => j with { Width = 860 + 16, Layout = j.Layout with { Sequence = [new Flight(2), new Turn(TurnKind.Winders, 3, 0, 0, "radiating"), new Flight(7)] } });
        Assert.Equal(828, plan.Riser(4).Outer.X, 3);
        Assert.Equal([25.98, 38.04, 25.98], plan.Turn!.Steps.Select(s => Math.Round(s.NarrowAlongFaces, 2)));
        Assert.Equal(26.90, plan.Turn.Steps[1].NarrowStraight, 2);
        Assert.Equal(478.05, plan.Turn.Steps[0].Wide, 2);
        Assert.Equal(2 * 349.95, plan.Turn.Steps[1].Wide, 0.011);
        Assert.All(plan.Turn.Steps, s => Assert.Equal(30, s.Taper.Degrees, 9));
    }

    [Fact]
    public void For_an_even_number_the_middle_riser_meets_the_newels_arris_and_the_rooms_corner()
    {
        var plan = Plan(j => j with { Layout = j.Layout with { Sequence = [new Flight(2), new Turn(TurnKind.Winders, 4, null, null, "equal-goings"), new Flight(7)] } });
        var middle = plan.Riser(5);
        Assert.True(middle.Inner.DistanceTo(plan.Turn!.Centre + new Vector2(45, 45)) < 1e-6);
        Assert.True(middle.Outer.DistanceTo(plan.Turn.Centre + new Vector2(812, 812)) < 1e-6);
    }
}
