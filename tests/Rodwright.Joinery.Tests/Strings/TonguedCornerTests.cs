using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Solids;
using Rodwright.Joinery.Tests.Solids;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Strings;

/// <summary>Wall strings tongued together at the corner of the room.</summary>
public class TonguedCornerTests
{
    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("right-kite-top")]
    [InlineData("balanced-turn")]
    public void They_go_together(string name)
    {
        var job = Samples.Job(name);
        var stair = Stair.SetOut(job with { Practice = job.Practice with { CornerJoint = CornerJoint.Tongued } }).Value!;
        var proof = Prover.Prove(stair.Kit);
        var corner = Assert.Single(stair.Kit.Joints, j => j.Kind == JointKind.Corner);
        Assert.Equal("tongued at the corner", proof.Joints.Single(j => j.Id == corner.Id).Kind);
        Assert.True(proof.Holds);
        foreach (var board in stair.Kit.Strings)
        {
            var solid = PartSolid.Of(board.Part);
            Assert.True(solid.IsWatertight);
            Assert.Equal(1, solid.Volume / PartVolume.Of(board.Part), 1e-4);
        }
    }

    /// <summary>A third of a string of 32 is 10.667: groove as wide, 12 deep, its middle in the middle of the other board's end; 10.667 off each side of the tongue.</summary>
    [Fact]
    public void The_tongue_is_a_third_of_the_string()
    {
        var job = Samples.Job("left-kite-low");
        var kit = Stair.SetOut(job with { Practice = job.Practice with { CornerJoint = CornerJoint.Tongued } }).Value!.Kit;
        var groove = kit.Parts.SelectMany(p => p.Cuts).Single(c => c.Kind == CutKind.CornerHousing);
        Assert.Equal(32 / 3.0, groove.Shape.Bounds.Width, 1e-9);
        Assert.Equal(12, groove.Depth);
        var cheeks = kit.Parts.SelectMany(p => p.Cuts).Where(c => c.Kind == CutKind.Cheek).ToList();
        Assert.Equal([32 / 3.0, 32], cheeks.Select(c => c.Depth), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal([0, 64 / 3.0], cheeks.Select(c => c.Beneath), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    [Fact]
    public void A_groove_that_is_not_where_the_tongue_comes_is_found()
    {
        var job = Samples.Job("left-kite-low");
        var kit = Stair.SetOut(job with { Practice = job.Practice with { CornerJoint = CornerJoint.Tongued } }).Value!.Kit;
        var lower = kit.Parts.Single(p => p.Cuts.Any(c => c.Kind == CutKind.CornerHousing));
        var moved = lower with { Cuts = [.. lower.Cuts.Select(c => c.Kind == CutKind.CornerHousing ? c with { Shape = c.Shape.Moved(new Geometry.Vector2(0.02, 0)) } : c)] };
        Assert.False(Prover.Prove(kit with { Parts = kit.Parts.Replace(lower, moved) }).Joints.Single(j => j.Kind == "tongued at the corner").Holds);
    }
}
