using CsCheck;
using Rodwright.Geometry;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Properties;

/// <summary>What holds of every plan, over 5,000 generated jobs of every layout where it is not said otherwise.</summary>
public class PlanPropertyTests
{
    private static StairPlan? Plan(Job job) => Planner.SetOut(job, RegulationCatalogue.Find(job.Regulation)!).Value;

    [Fact]
    public void Rises_sum_exactly_to_the_measured_height() => Generated.All.Holds(job =>
    {
        if (Plan(job) is not { } plan) return;
        Assert.Equal(job.Survey.Height, Enumerable.Repeat(plan.Rise, plan.Risers).Sum(), 1e-9);
        Assert.Equal(job.Layout.Risers, plan.Risers);
    }, iter: 5000);

    [Fact]
    public void Steps_tile_the_clear_width_without_gap_or_overlap() => Generated.All.Holds(job =>
    {
        if (Plan(job) is not { } plan) return;
        // Between the faces of the strings and newels, riser line to riser line, the areas of the steps add up to the area between the first riser and
        // the last; walked along the boundaries, so that a step turned inside out would count against the sum.
        var sum = Enumerable.Range(1, plan.Risers - 1).Sum(k => Between(plan, k, k + 1));
        var whole = Between(plan, 1, plan.Risers);
        Assert.Equal(whole, sum, 1e-3);
        Assert.All(Enumerable.Range(1, plan.Risers - 1), k => Assert.True(Between(plan, k, k + 1) > 0));
    }, iter: 5000);

    private static double Between(StairPlan plan, int lower, int upper)
    {
        var ring = new List<Point2>();
        ring.AddRange(Along(plan, plan.Outer, r => r.Outer, lower, upper));
        ring.AddRange(Along(plan, plan.Inner, r => r.Inner, lower, upper).Reverse());
        var twice = 0.0;
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++) twice += ring[i].X * ring[j].Y - ring[j].X * ring[i].Y;
        return twice / 2;
    }

    private static IEnumerable<Point2> Along(StairPlan plan, Boundary boundary, Func<RiserLine, Point2> end, int lower, int upper)
    {
        var edges = boundary.EdgesOf(plan.RiserLines.Select(end));
        yield return end(plan.Riser(lower));
        for (var i = edges[lower - 1] + 1; i <= edges[upper - 1]; i++) yield return boundary.Edges[i].From;
        yield return end(plan.Riser(upper));
    }

    [Fact]
    public void Goings_are_equal_on_the_walking_line_and_narrow_ends_are_equal_along_the_faces() => Generated.All.Holds(job =>
    {
        if (Plan(job) is not { } plan) return;
        foreach (var turn in plan.Turns.Where(t => t.Kind == TurnKind.Winders))
        {
            if (turn.Turn.SharedBefore + turn.Turn.SharedAfter == 0) Assert.Equal(90 * turn.Site.Quarters, turn.Steps.Sum(s => s.Taper.Degrees), 1e-6);
            if (turn.Method is not ("equal-goings" or "equal-arcs")) continue;
            var going = turn.Method == "equal-arcs" ? turn.Steps.Select(s => s.GoingArc).ToList() : [.. turn.Steps.Select(s => s.GoingChord)];
            Assert.True(going.Max() - going.Min() < 1e-6);
            Assert.True(turn.Steps.Max(s => s.NarrowAlongFaces) - turn.Steps.Min(s => s.NarrowAlongFaces) < 1e-6);
        }
    }, iter: 5000);

    [Fact]
    public void The_other_hand_is_the_mirror_image() => Generated.All.Holds(job =>
    {
        var other = OtherHand.Of(job);
        if (Plan(job) is not { } a || Plan(other) is not { } b) return;
        // Plans are set out left-handed whatever the hand, so both are one plan until one of them is mirrored.
        var mirrored = b.Mirrored();
        for (var k = 1; k <= a.Risers; k++)
        {
            Assert.True(a.Riser(k).Inner.DistanceTo(mirrored.Riser(k).Inner.Mirrored) < 1e-9);
            Assert.True(a.Riser(k).Outer.DistanceTo(mirrored.Riser(k).Outer.Mirrored) < 1e-9);
        }
        Assert.Equal(a.Turn?.FirstRiser, b.Turn?.FirstRiser);
    }, iter: 5000);

    [Fact]
    public void A_solved_offset_is_the_smallest_whole_millimetre_that_keeps_both_limits() => Generated.Tapered.Holds(job =>
    {
        var regulation = RegulationCatalogue.Find(job.Regulation)!;
        if (job.Layout.Turn is not { FirstRiser: null, LastRiser: null } || Plan(job) is not { Turn: { } turn } plan) return;
        var wanted = (Going: Math.Max(regulation.TaperedAtLeastStraight ? job.Going : 0, regulation.LeastGoing * job.ModelScale), Narrow: regulation.LeastNarrow * job.ModelScale);
        Assert.Equal(Math.Round(turn.FirstRiser), turn.FirstRiser);
        var fits = Keeps(turn);
        if (!fits) return; // reported as a breach; its own tests
        if (turn.FirstRiser > 0) Assert.False(Keeps(At(turn.FirstRiser - 1)));

        TurnPlan At(double e) => Plan(job with
        {
            Layout = job.Layout with { Sequence = [.. job.Layout.Sequence.Select(i => i is Turn t ? t with { FirstRiser = e, LastRiser = e } : i)] },
        })!.Turn!;

        bool Keeps(TurnPlan t) => t.Steps.All(s =>
            (regulation.Going == GoingMeasure.Chord ? s.GoingChord : s.GoingArc) >= wanted.Going - 1e-6 && s.NarrowAlongFaces >= wanted.Narrow - 1e-6);
    }, iter: 2000);
}
