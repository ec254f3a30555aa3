using CsCheck;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Solids;
using Rodwright.Joinery.Tests.Solids;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;
using Small = Rodwright.Stairs.Jobs.SmallParts;

namespace Rodwright.Joinery.Tests.SmallParts;

/// <summary>Wedges driven home, glue blocks rubbed in, pegs in their bores.</summary>
public class SmallPartTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    private static Stair With(Job job, Small? small = null) => Stair.SetOut(job with { SmallParts = small ?? new() }).Value!;

    private static void AssertProved(Stair stair)
    {
        var proof = Prover.Prove(stair.Kit);
        Assert.All(proof.Joints, j => Assert.True(j.Holds, $"{j.Id}: {j.Gap} ({j.Kind})"));
        Assert.Empty(proof.Clashes);
        Assert.All(proof.Blanks, b => Assert.True(b.Holds, $"{b.Part}: {b.Outside}"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_sample_with_its_wedges_blocks_and_pegs_goes_together(string name) => AssertProved(With(Samples.Job(name)));

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_piece_is_closed_and_has_the_volume_of_its_description(string name)
    {
        foreach (var part in With(Samples.Job(name)).Kit.Parts.Where(p => p.Kind is PartKind.Wedge or PartKind.GlueBlock or PartKind.Peg))
        {
            var solid = PartSolid.Of(part);
            Assert.True(solid.IsWatertight, part.Id);
            Assert.Equal(1, solid.Volume / PartVolume.Of(part), 1e-4);
        }
    }

    /// <summary>
    /// By hand, for a going of 225 and the usual wedges: under a tread 4 thick 150 before the next riser's face, 1 in 14, trimmed at that riser's back 12 further on: 162 long, 4 + 162 / 14 = 15.571 at its thick end. Behind a
    /// riser from 100 above its lower edge to 25 below it: 125 long, 4 + 125 / 14 = 12.929. Both 11 wide in housings 12 deep.
    /// </summary>
    [Fact]
    public void Wedges_are_what_their_housings_leave()
    {
        var kit = With(Samples.Job("left-kite-low")).Kit;
        var site = kit.Strings.First(s => !s.Site.IsWall && s.Site.LastRiser == 13).Site;
        var (tread, riser) = (kit.Find($"wedge-tread-9-{site.Id}"), kit.Find($"wedge-riser-9-{site.Id}"));
        Assert.Equal(162, tread.FaceSide.Outline.Bounds.Width, 1e-6);
        Assert.Equal(4 + 162.0 / 14, tread.FaceSide.Outline.Bounds.Height, 1e-6);
        Assert.Equal(125, riser.FaceSide.Outline.Bounds.Height, 1e-6);
        Assert.Equal(4 + 125.0 / 14, riser.FaceSide.Outline.Bounds.Width, 1e-6);
        Assert.Equal(11, tread.FaceSide.Thickness);
        Assert.Equal(tread.Mark, kit.Find($"wedge-tread-10-{site.Id}").Mark);
    }

    [Fact]
    public void A_wedge_that_is_too_thin_does_not_fill_its_space()
    {
        var kit = With(Samples.Job("left-kite-low")).Kit;
        var wedge = kit.Parts.First(p => p.Kind == PartKind.Wedge);
        var v = wedge.FaceSide.Outline.Vertices;
        var thin = wedge with { Faces = [wedge.FaceSide with { Outline = Geometry.Path2.Polygon(v.Select((x, i) => i == 0 ? x.At + new Geometry.Vector2(0, 0.05) : x.At)) }] };
        var proof = Prover.Prove(kit with { Parts = kit.Parts.Replace(wedge, thin) });
        Assert.False(proof.Joints.Single(j => j.Male == wedge.Id).Holds);
    }

    [Theory]
    [InlineData(700, 2)]
    [InlineData(900, 2)]
    [InlineData(901, 3)]
    [InlineData(1200, 3)]
    [InlineData(1300, 4)]
    public void Wider_steps_have_more_blocks(double clear, int blocks) => Assert.Equal(blocks, new Small().BlocksFor(clear));

    /// <summary>Two pegs for each string's end in a newel, one for each rail's.</summary>
    [Fact]
    public void Every_tenon_has_its_pegs()
    {
        var kit = With(Samples.Job("balustrade")).Kit;
        var tenons = kit.Joints.Count(j => j.Kind == JointKind.Tenon);
        var rails = kit.Joints.Count(j => j.Kind == JointKind.RailTenon);
        Assert.True(tenons > 0 && rails > 0);
        Assert.Equal(2 * tenons + rails, kit.Parts.Count(p => p.Kind == PartKind.Peg));
    }

    [Fact]
    public void Any_stair_goes_together_with_its_wedges()
    {
        var proved = 0;
        Generated.Jobs.Holds(job =>
        {
            if (Stair.SetOut(job).Value is not { } plain || !Prover.Prove(plain.Kit).Holds) return;
            var stair = Stair.SetOut(job with { SmallParts = new() }).Value!;
            var proof = Prover.Prove(stair.Kit);
            Assert.True(proof.Holds, string.Join("; ", proof.Joints.Where(j => !j.Holds).Select(j => $"{j.Id} {j.Gap} {j.Kind} {j.Reached}").Concat(proof.Clashes.Select(c => c.ToString())).Take(5)) + "\n" + JobFile.Write(job));
            Interlocked.Increment(ref proved);
        }, iter: 150);
        Assert.InRange(proved, 30, 150);
    }
}
