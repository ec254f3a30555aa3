using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Parts;

/// <summary>Legal stairs off the beaten track.</summary>
public class OddStairTests
{
    private static Job Kite => Samples.Job("left-kite-low");

    private static Stair With(Func<Job, Job> change) => Stair.SetOut(change(Kite)).Value!;

    private static Stair Turned(params LayoutItem[] sequence) => With(j => j with { Layout = j.Layout with { Sequence = [.. sequence] } });

    [Theory]
    [InlineData(70.0, null)]
    [InlineData(null, 70.0)]
    [InlineData(70.0, 70.0)]
    public void A_landing_with_risers_past_the_newel_goes_together(double? first, double? last) =>
        Assert.True(Turned(new Flight(5), new Turn(TurnKind.Landing, 1, first, last, ""), new Flight(6)).Prove().Holds);

    [Theory]
    [InlineData(62)]
    [InlineData(70)]
    public void Tapered_steps_past_a_small_newel_are_carried_by_the_strings(double e)
    {
        var stair = With(j => j with
        {
            Practice = j.Practice with { Newel = 70 },
            Layout = j.Layout with { Sequence = [new Flight(3), new Turn(TurnKind.Winders, 3, e, e, "equal-goings"), new Flight(6)] },
        });
        Assert.True(stair.Prove().Holds);
        Assert.Contains(stair.Kit.Joints, joint => joint.Male == "riser-4" && joint.Female == "newel-string-1");
    }

    [Fact]
    public void What_is_jointed_up_is_boxed_round_the_wood_that_is_missing_only()
    {
        var stair = Turned(new Flight(3), new Turn(TurnKind.Winders, 3, null, null, "equal-goings"), new Flight(6));
        var board = stair.Kit.Strings.Single(s => s.Site.Mark == "W2").Part;
        foreach (var piece in board.Blank.JointedUp)
        {
            var outside = board.FaceSide.Outline.Flattened().Select(board.Blank.OnBoard)
                .Where(p => p.Y > board.Blank.Width + 0.05 || p.Y < -0.05).ToList();
            Assert.InRange(piece.Length, 1, outside.Max(p => p.X) - outside.Min(p => p.X) + 80);
        }
    }

    [Fact]
    public void A_top_newel_hangs_150_below_its_strings_lower_edge()
    {
        var stair = With(j => j);
        var f2 = stair.Kit.Strings.Single(s => s.Site.Mark == "F2");
        var shoulder = f2.Tenons.Single(t => t.IsUpper).Shoulder;
        Assert.Equal(GraphCut.HeightAt(f2.LowerEdge, shoulder) - 150, stair.Kit.Find("newel-top").FaceSide.Frame.Origin.Z, 1e-9);
    }

    [Theory]
    [InlineData(Hand.Left)]
    [InlineData(Hand.Right)]
    public void A_straight_flight_walled_both_sides_has_no_hand(Hand hand)
    {
        var stair = With(j => j with { Layout = new(hand, [new Flight(12)]), Sides = new(SideKind.Wall, SideKind.Wall) });
        Assert.Equal(16, stair.Plan.Riser(1).Inner.X, 1e-9);
        Assert.Equal(812, stair.Plan.Riser(1).Outer.X, 1e-9);
        Assert.Equal(["wall string, left side", "wall string, right side"], stair.Kit.Strings.Select(s => s.Site.Name).Order());
    }

    [Fact]
    public void What_the_job_fixes_is_said_to_decide()
    {
        var turn = Turned(new Flight(5), new Turn(TurnKind.Landing, 1, 30, null, ""), new Flight(6)).Plan.Turn!;
        Assert.Equal("first riser fixed in the job at 30; last: riser faces on the newel's centre", turn.DecidedBy);
    }

    [Fact]
    public void A_pendant_newel_ends_below_its_lowest_joint_and_a_long_one_runs_down_past_the_floor()
    {
        var pendant = With(j => j with
        {
            Layout = j.Layout with { Sequence = [new Flight(6), new Turn(TurnKind.Winders, 3, null, null, "equal-goings"), new Flight(3)] },
            Practice = j.Practice with { PendantNewel = true },
        });
        var newel = pendant.Kit.Find("newel-turn");
        Assert.True(newel.FaceSide.Frame.Origin.Z > 300);
        Assert.All(newel.Cuts, c => Assert.True(c.Shape.Bounds.MinY >= 150 - 1e-6));
        Assert.True(pendant.Prove().Holds);
        var through = With(j => j with { Practice = j.Practice with { NewelBelowFloor = 250 } });
        Assert.Equal(-250, through.Kit.Find("newel-bottom").FaceSide.Frame.Origin.Z, 1e-9);
        Assert.True(through.Prove().Holds);
    }

    [Fact]
    public void A_riser_on_its_tread_is_wedged_down_past_the_treads_back()
    {
        var stair = With(j => j with { Practice = j.Practice with { RiserOnTread = true } });
        var housing = stair.Kit.Strings.Single(s => s.Site.Mark == "W2").Housings.First(h => h.IsRiser && h.Step > 6);
        Assert.Equal((housing.Step - 1) * stair.Plan.Rise - 22 - 25, housing.Shape.Bounds.MinY, 1e-9);
        Assert.Equal((housing.Step - 1) * stair.Plan.Rise, housing.Seat.Bounds.MinY, 1e-9);
        Assert.True(stair.Prove().Holds);
    }
}
