using Rodwright.Properties;
using Rodwright.Stairs.Rules;
using Rodwright.Testing;
using CsCheck;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Xunit;

namespace Rodwright.Stairs.Tests.Regulations;

public sealed class TaperedRunTests
{
    [Fact]
    public void A_quarter_turn_is_one_run_over_one_bend_with_its_offsets_beyond()
    {
        var plan = Bench.Turned(2600, 225, 4, Bench.Winders(3, 30), 5).Plan();
        var run = Assert.Single(TaperedRun.Of(plan));
        Assert.Equal((5, 7, 3, 1), (run.First, run.Last, run.Count, run.Quarters));
        Assert.Equal(plan.WalkingRadius, Assert.Single(run.Arcs).Radius, 6);
        Assert.Equal(30, run.Before!.Value.From.DistanceTo(run.Before.Value.To), 6);
        Assert.Equal(30, run.After!.Value.From.DistanceTo(run.After.Value.To), 6);
    }

    [Fact]
    public void Risers_on_the_newels_centre_reach_nowhere() =>
        Assert.Empty(TaperReachRule.Instance.Measure(Bench.Turned(2600, 225, 4, Bench.Winders(3, 0), 5).Plan()));

    [Fact]
    public void A_mirrored_stair_has_the_same_runs() => Generated.Jobs.Holds(job =>
    {
        var plan = Planner.SetOut(job, RegulationCatalogue.Find(job.Regulation)!).Value!;
        var (left, right) = (TaperedRun.Of(plan).ToList(), TaperedRun.Of(plan.Mirrored()).ToList());
        Assert.Equal(left.Count, right.Count);
        foreach (var (a, b) in left.Zip(right))
        {
            Assert.Equal((a.Where, a.Quarters, a.Arcs.Length), (b.Where, b.Quarters, b.Arcs.Length));
            Assert.Equal(Reach(a.Before), Reach(b.Before), 6);
            Assert.Equal(Reach(a.After), Reach(b.After), 6);
        }

        double Reach((Geometry.Point2 From, Geometry.Point2 To)? stretch) => stretch is { } s ? s.From.DistanceTo(s.To) : 0;
    }, iter: 200, threads: 1);
}
