using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Solids;
using Rodwright.Joinery.Strings;
using Rodwright.Joinery.Tests.Solids;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Strings;

/// <summary>Where wall strings meet the skirtings.</summary>
public class SkirtingTests
{
    private static Stair With(string name, SkirtingJoint joint, double? above = null) =>
        Samples.Job(name) is var job ? Stair.SetOut(job with { Practice = job.Practice with { SkirtingJoint = joint, SkirtingAbove = above } }).Value! : throw new InvalidOperationException();

    private static StringBoard Foot(Stair stair) => stair.Kit.Strings.First(s => s.Site.Lower is { Kind: StringEndKind.Foot, Level: 0 });

    public static TheoryData<string, SkirtingJoint> All
    {
        get
        {
            var data = new TheoryData<string, SkirtingJoint>();
            foreach (var name in Samples.Names)
                foreach (var joint in (SkirtingJoint[])[SkirtingJoint.Mitred, SkirtingJoint.Eased]) data.Add(name, joint);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_stair_still_goes_together(string name, SkirtingJoint joint)
    {
        var stair = With(name, joint, above: 150);
        var proof = Prover.Prove(stair.Kit);
        Assert.True(proof.Holds, string.Join("; ", proof.Joints.Where(j => !j.Holds).Select(j => j.Id).Concat(proof.Clashes.Select(c => c.ToString())).Concat(proof.Blanks.Where(b => !b.Holds).Select(b => b.Part))));
        foreach (var board in stair.Kit.Strings)
        {
            var solid = PartSolid.Of(board.Part);
            Assert.True(solid.IsWatertight, board.Part.Id);
            Assert.Equal(1, solid.Volume / PartVolume.Of(board.Part), 1e-4);
            // Skirtings of another height above: the heads are level with those.
            if (board.Site.Upper.Kind == StringEndKind.Head) Assert.Equal(board.Site.Upper.Level + 150, board.UpperEdge.Vertices[^1].At.Y, 1e-9);
        }
    }

    /// <summary>Pitch 41.6335 degrees (200 to 225) and a skirting of 120: the mitre lies half of that, 20.8167, off plumb and comes down 120 x 0.38021 = 45.625 nearer the riser.</summary>
    [Fact]
    public void A_mitre_halves_the_angle_between_the_top_edges()
    {
        var (plumb, mitred) = (Foot(With("left-kite-low", SkirtingJoint.Plumb)), Foot(With("left-kite-low", SkirtingJoint.Mitred)));
        var top = mitred.UpperEdge.Vertices[0].At;
        Assert.Equal(plumb.UpperEdge.Vertices[0].At.X, top.X, 1e-9);
        Assert.Equal(120, top.Y, 1e-9);
        Assert.Equal(0, mitred.LowerEdge.Vertices[0].At.Y, 1e-9);
        Assert.Equal(45.625, mitred.LowerEdge.Vertices[0].At.X - top.X, 2e-3);
    }

    /// <summary>250 of level and of rake meet in an arc of radius 250 / tan 20.8167 = 657.52, which begins level at the skirting's height, 250 before the place of the plumb cut.</summary>
    [Fact]
    public void An_easing_runs_into_the_level_of_the_skirting()
    {
        var job = Samples.Job("straight-flight");
        var (plumb, eased) = (Foot(With("straight-flight", SkirtingJoint.Plumb)), Foot(With("straight-flight", SkirtingJoint.Eased)));
        var corner = plumb.UpperEdge.Vertices[0].At;
        Assert.Equal(corner.X - 250, eased.UpperEdge.Vertices[0].At.X, 1e-9);
        Assert.Equal(corner.Y, eased.UpperEdge.Vertices[0].At.Y, 1e-9);
        Assert.Equal(job.Practice.Skirting, corner.Y, 1e-9);
        var easing = eased.Easings.First(e => e.Edge == "upper");
        Assert.Equal(250, easing.Tangent, 1e-9);
        Assert.Equal(250 / Math.Tan(easing.Turn.Radians / 2), easing.Radius, 1e-6);
        // Along the rake the arc ends as far from the corner as it began.
        Assert.Equal(250, corner.DistanceTo(eased.UpperEdge.Vertices[1].At), 1e-9);
        Assert.Equal(eased.UpperEdge.Vertices[0].At.X, eased.LowerEdge.Vertices[0].At.X, 1e-9);
    }
}
