using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Solids;
using Rodwright.Joinery.Tests.Solids;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Balustrades;

/// <summary>Nosing and apron lining at the open edges of landings.</summary>
public class LandingEdgeTests
{
    private static Stair With(Job job, LandingWay way = LandingWay.Away, double? length = 1400) =>
        Stair.SetOut(job with { Balustrade = new() { UpperLanding = new() { Length = length, Way = way } }, LandingEdge = new() }).Value!;

    public static TheoryData<string, LandingWay> All
    {
        get
        {
            var data = new TheoryData<string, LandingWay>();
            // Not the model in half scale: rails of full size are too wide for its newels.
            foreach (var name in Samples.Names.Where(n => n != "half-scale-teaching" && Samples.Job(n).HasNewelString))
                foreach (var way in Enum.GetValues<LandingWay>()) data.Add(name, way);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void They_are_proved_and_closed(string name, LandingWay way)
    {
        var stair = With(Samples.Job(name), way);
        Assert.Contains(stair.Kit.Parts, p => p.Kind == PartKind.Apron);
        var proof = Prover.Prove(stair.Kit);
        Assert.All(proof.Joints, j => Assert.True(j.Holds, $"{j.Id}: {j.Gap} ({j.Kind})"));
        Assert.Empty(proof.Clashes);
        Assert.All(proof.Blanks, b => Assert.True(b.Holds, $"{b.Part}: {b.Outside}"));
        foreach (var part in stair.Kit.Parts.Where(p => p.Kind is PartKind.Apron or PartKind.LandingNosing))
        {
            var solid = PartSolid.Of(part);
            Assert.True(solid.IsWatertight, part.Id);
            Assert.Equal(1, solid.Volume / PartVolume.Of(part), 1e-4);
        }
    }

    /// <summary>
    /// A straight flight up +y, its open side on the left with newels of 90; the landing's edge runs from the top newel away from the steps, 1400 to the wall: pieces from its face at 45, 1355 long. The well lies back, at
    /// smaller y: the apron's face 20.5 (half a baluster) in front of the newel's centre, the nosing 20 before that, 95 wide and 22 thick, its top on the floor.
    /// </summary>
    [Theory]
    [InlineData(Hand.Left)]
    [InlineData(Hand.Right)]
    public void The_apron_is_flush_with_the_balusters_and_the_nosing_stands_before_it(Hand hand)
    {
        var job = Samples.Job("left-kite-low");
        var stair = With(job with { Layout = job.Layout with { Hand = hand }, Sides = hand == Hand.Left ? job.Sides : new(job.Sides.Right, job.Sides.Left) });
        var (kit, floor) = (stair.Kit, stair.Job.Survey.Height);
        var centre = kit.Plan.Newels.Single(n => n.Id == "newel-top").Centre;
        // The upper flight runs along -x (a left hand), +x (a right one): the well lies back along it.
        var back = hand == Hand.Left ? 1 : -1;
        var (apron, nosing) = (PartSolid.Of(kit.Find("apron-1")).Placed(kit.Find("apron-1").FaceSide.Frame).Bounds, PartSolid.Of(kit.Find("landing-nosing-1")).Placed(kit.Find("landing-nosing-1").FaceSide.Frame).Bounds);
        Assert.Equal(centre.X + back * 20.5, back > 0 ? apron.Max.X : apron.Min.X, 1e-6);
        Assert.Equal(9, apron.Max.X - apron.Min.X, 1e-6);
        Assert.Equal(1355, apron.Max.Y - apron.Min.Y, 1e-6);
        Assert.Equal(floor - 22, apron.Max.Z, 1e-6);
        Assert.Equal(235, apron.Max.Z - apron.Min.Z, 1e-6);
        Assert.Equal(centre.X + back * 40.5, back > 0 ? nosing.Max.X : nosing.Min.X, 1e-3);
        Assert.Equal(95, nosing.Max.X - nosing.Min.X, 1e-3);
        Assert.Equal(floor, nosing.Max.Z, 1e-6);
        Assert.Equal(22, nosing.Max.Z - nosing.Min.Z, 1e-6);
        Assert.Contains(kit.Joints, j => j is { Id: "landing-base-1/landing-nosing-1", Kind: JointKind.RailOnNosing });
    }

    [Fact]
    public void A_job_that_wants_them_without_an_edge_is_told()
    {
        var stair = With(Samples.Job("straight-flight"), length: null);
        Assert.DoesNotContain(stair.Kit.Parts, p => p.Kind == PartKind.Apron);
        Assert.Contains(stair.Findings, f => f.Code == "RW4107");
    }

    [Fact]
    public void An_apron_that_hangs_too_low_does_not_close()
    {
        var kit = With(Samples.Job("left-kite-low")).Kit;
        var apron = kit.Find("apron-1");
        var low = apron with { Faces = [apron.FaceSide with { Outline = apron.FaceSide.Outline.Moved(new Geometry.Vector2(0, -0.02)) }] };
        Assert.False(Prover.Prove(kit with { Parts = kit.Parts.Replace(apron, low) }).Joints.Single(j => j.Kind == "glued and pinned").Holds);
    }
}
