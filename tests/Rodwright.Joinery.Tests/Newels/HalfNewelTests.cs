using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Solids;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Newels;

/// <summary>Half newels against the end of a wall (trade-practice.md 4: turned as two halves, split apart; morticed for the string that returns on the wall).</summary>
public class HalfNewelTests
{
    private static Job With(Job job, EndNewel foot, EndNewel head) => job with { Ends = new(foot, head) };

    [Theory]
    [InlineData(EndNewel.HalfNewel, EndNewel.Newel, Hand.Left, false)]
    [InlineData(EndNewel.Newel, EndNewel.HalfNewel, Hand.Left, false)]
    [InlineData(EndNewel.HalfNewel, EndNewel.HalfNewel, Hand.Right, false)]
    [InlineData(EndNewel.HalfNewel, EndNewel.HalfNewel, Hand.Left, true)]
    public void They_go_together(EndNewel foot, EndNewel head, Hand hand, bool bothOpen)
    {
        var job = Samples.Job("straight-flight");
        job = With(job with { Layout = job.Layout with { Hand = hand }, Sides = bothOpen ? new(SideKind.Open, SideKind.Open) : Sides.For(hand) }, foot, head);
        var stair = Stair.SetOut(job).Value!;
        var proof = Prover.Prove(stair.Kit);
        Assert.All(proof.Joints, j => Assert.True(j.Holds, $"{j.Id}: {j.Gap} ({j.Kind})"));
        Assert.Empty(proof.Clashes);
        Assert.Empty(proof.NewelCuts);
        foreach (var newel in stair.Kit.Parts.Where(p => p.Cuts.Any(c => c.Kind == CutKind.Split)))
        {
            var solid = PartSolid.Of(newel);
            Assert.True(solid.IsWatertight);
            var box = solid.Placed(newel.FaceSide.Frame).Bounds;
            Assert.Equal(45, box.Max.Y - box.Min.Y, 1e-9);
            Assert.Equal(90, box.Max.X - box.Min.X, 1e-9);
        }
    }

    [Fact]
    public void The_back_stands_in_the_plane_of_the_riser_and_the_tenon_stays_within_the_half()
    {
        var stair = Stair.SetOut(With(Samples.Job("straight-flight"), EndNewel.Newel, EndNewel.HalfNewel)).Value!;
        var newel = stair.Kit.Find("newel-top");
        var solid = PartSolid.Of(newel).Placed(newel.FaceSide.Frame);
        Assert.Equal(12 * 235, solid.Bounds.Max.Y, 1e-9);
        // Half of 90, less 3 of wood and 2 of clearance behind the tenon.
        Assert.Equal(40 + 2, newel.Cuts.First(c => c.Kind == CutKind.Mortice).Depth, 1e-9);
        Assert.DoesNotContain(newel.Cuts, c => c.Kind == CutKind.Notch);
        // The last riser passes behind the half newel and only butts there.
        Assert.DoesNotContain(newel.Cuts, c => c.Joint.StartsWith("riser-13/", StringComparison.Ordinal));
    }

    [Fact]
    public void Any_stair_that_goes_together_with_whole_newels_does_with_halves()
    {
        var proved = 0;
        Generated.Jobs.Holds(job =>
        {
            if (Stair.SetOut(job).Value is not { } whole || !whole.Plan.Newels.Any(n => n.Role is Stairs.Plans.NewelRole.Bottom or Stairs.Plans.NewelRole.Top) || !Prover.Prove(whole.Kit).Holds) return;
            var half = Stair.SetOut(With(job, EndNewel.HalfNewel, EndNewel.HalfNewel)).Value!;
            var proof = Prover.Prove(half.Kit);
            Assert.True(proof.Holds, string.Join("; ", proof.Joints.Where(j => !j.Holds).Select(j => $"{j.Id} {j.Gap} {j.Kind}").Concat(proof.Clashes.Concat(proof.NewelCuts).Select(c => c.ToString()))));
            foreach (var newel in half.Kit.Parts.Where(p => p.Kind == PartKind.Newel)) Assert.True(PartSolid.Of(newel).IsWatertight, newel.Id);
            Interlocked.Increment(ref proved);
        }, iter: 120);
        Assert.InRange(proved, 40, 120);
    }
}
