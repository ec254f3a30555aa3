using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Solids;
using Rodwright.Joinery.Tests.Solids;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Carriages;

/// <summary>Rough strings under wide flights, and their brackets.</summary>
public class CarriageTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_sample_goes_together_with_one(string name)
    {
        var stair = Stair.SetOut(Samples.Job(name) with { Carriage = new() { Over = 400 }, SmallParts = new() }).Value!;
        var proof = Prover.Prove(stair.Kit);
        Assert.All(proof.Joints, j => Assert.True(j.Holds, $"{j.Id}: {j.Gap} ({j.Kind})"));
        Assert.Empty(proof.Clashes);
        Assert.All(proof.Blanks, b => Assert.True(b.Holds, $"{b.Part}: {b.Outside}"));
        foreach (var part in stair.Kit.Parts.Where(p => p.Kind is PartKind.Carriage or PartKind.CarriageBracket))
        {
            var solid = PartSolid.Of(part);
            Assert.True(solid.IsWatertight, part.Id);
            Assert.Equal(1, solid.Volume / PartVolume.Of(part), 1e-6);
        }
    }

    /// <summary>Two strings do up to 900 clear; one carriage up to 1800, two beyond.</summary>
    [Theory]
    [InlineData(900, 0)]
    [InlineData(901, 1)]
    [InlineData(1800, 1)]
    [InlineData(1801, 2)]
    public void The_width_asks_for_it(double clear, int count) => Assert.Equal(count, new Carriage().For(clear));

    /// <summary>Width over strings 1000 is 936 clear between strings of 32; 960 is 896.</summary>
    [Theory]
    [InlineData(1000, false, true)]
    [InlineData(1000, true, false)]
    [InlineData(960, false, false)]
    public void A_wide_flight_without_one_is_told_of_it_and_what_helps_helps(double width, bool has, bool told)
    {
        var job = Samples.Job("straight-flight") with { Width = width, Carriage = has ? new() : null };
        var found = Stair.SetOut(job).Value!.Findings.Where(f => f.Code == "RW4110").ToList();
        Assert.Equal(told, found.Count == 1);
        if (told) Assert.Contains("a carriage under each straight flight", found[0].Message, StringComparison.Ordinal);
    }

    /// <summary>By hand: rise 220, going 235, tread 22, riser 12: the upper edge passes (going k + 12, 220 k - 22) for every tread k, and meets the floor 12 + 22 x 235 / 220 = 35.5 behind the first riser's face.</summary>
    [Fact]
    public void Its_upper_edge_runs_along_the_risers()
    {
        var job = Samples.Job("straight-flight") with { Width = 1100, Carriage = new() };
        var kit = Stair.SetOut(job).Value!.Kit;
        var carriage = Assert.Single(kit.Parts, p => p.Kind == PartKind.Carriage);
        var (rise, going) = (kit.Plan.Rise, kit.Plan.Going);
        var world = carriage.FaceSide.Outline.Vertices.Select(v => carriage.FaceSide.Frame.ToWorld(v.At)).ToList();
        Assert.Equal(12 + 22 * going / rise, world.Where(p => Math.Abs(p.Z) < 1e-6).Min(p => p.Y), 1e-6);
        var last = kit.Plan.Risers;
        Assert.Contains(world, p => Math.Abs(p.Y - ((last - 1) * going + 12)) < 1e-6 && Math.Abs(p.Z - ((last - 1) * rise - 22)) < 1e-6);
    }
}
