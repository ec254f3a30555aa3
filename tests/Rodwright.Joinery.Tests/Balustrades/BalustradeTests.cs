using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Solids;
using Rodwright.Joinery.Tests.Solids;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Balustrades;

/// <summary>Handrails, base rails, balusters and caps of whole stairs.</summary>
public class BalustradeTests
{
    /// <summary>All but the stair whose flights stand over one another: its lower rail meets the upper flight's string, which is told.</summary>
    public static TheoryData<string> Names => [.. Samples.Names.Where(n => n != "double-kite")];

    private static Stair With(Job job, Balustrade? balustrade = null) => Stair.SetOut(job with { Balustrade = balustrade ?? new() }).Value!;

    private static void AssertProved(Stair stair)
    {
        var proof = Prover.Prove(stair.Kit);
        Assert.All(proof.Joints, j => Assert.True(j.Holds, $"{j.Id}: {j.Gap} ({j.Kind})"));
        Assert.Empty(proof.Clashes);
        Assert.Empty(proof.NewelCuts);
        Assert.All(proof.Blanks, b => Assert.True(b.Holds, $"{b.Part}: {b.Outside}"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_sample_with_a_balustrade_goes_together(string name) => AssertProved(With(Samples.Job(name)));

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_pieces_are_closed_and_have_the_volume_of_their_description(string name)
    {
        foreach (var part in With(Samples.Job(name)).Kit.Parts.Where(p => !p.Kind.IsOfStep()))
        {
            var solid = PartSolid.Of(part);
            Assert.True(solid.IsWatertight, part.Id);
            Assert.Equal(1, solid.Volume / PartVolume.Of(part), 1e-4);
        }
    }
}
