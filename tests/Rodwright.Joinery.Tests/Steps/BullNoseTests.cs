using System.Collections.Immutable;
using CsCheck;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Solids;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Steps;

/// <summary>A bottom step with a rounded end: block, bent riser, wedges, the tread over them, the newel behind them.</summary>
public class BullNoseTests
{
    private static Stair Straight(Hand hand = Hand.Left, bool bothOpen = false) => Stair.SetOut(Samples.Job("straight-flight") is var job ? job with
    {
        Layout = job.Layout with { Hand = hand },
        Sides = bothOpen ? new(SideKind.Open, SideKind.Open) : Sides.For(hand),
        BottomStep = new() { Shape = BottomShape.BullNose },
    } : null!).Value!;

    private static void AssertProved(Stair stair)
    {
        var proof = Prover.Prove(stair.Kit);
        Assert.All(proof.Joints, j => Assert.True(j.Holds, $"{j.Id}: {j.Gap} ({j.Kind})"));
        Assert.Empty(proof.Clashes);
        Assert.Empty(proof.NewelCuts);
        Assert.All(proof.Blanks, b => Assert.True(b.Holds, $"{b.Part}: {b.Outside}"));
    }

    [Theory]
    [InlineData(Hand.Left, false)]
    [InlineData(Hand.Right, false)]
    [InlineData(Hand.Left, true)]
    public void It_goes_together(Hand hand, bool bothOpen) => AssertProved(Straight(hand, bothOpen));

    [Fact]
    public void The_newel_stands_back_at_the_second_riser_and_its_string_begins_there()
    {
        var plan = Straight().Kit.Plan;
        var newel = plan.Newels.Single(n => n.Id == "newel-bottom");
        Assert.Equal(new(0, 235), newel.Centre);
        Assert.Equal(2, plan.Strings.Single(s => !s.IsWall).FirstRiser);
    }

    /// <summary>Worked out by hand: going 235 and a newel of 90 leave 190 to the newel's face, so R = 190; round the end the middle of a 2 mm veneer runs (190 - 1) pi / 2 = 296.88.</summary>
    [Fact]
    public void The_riser_is_as_long_as_the_middle_of_its_veneer()
    {
        var stair = Straight();
        var end = Assert.Single(stair.Kit.Plan.RoundedEnds);
        Assert.Equal(190, end.Radius, 1e-9);
        Assert.Equal(296.8805, end.Development(-1), 1e-4);
        var riser = stair.Kit.Find("riser-1");
        // From the spring, 190 inside the return's face, which stands 45 - 10 - 20 = 15 outside the string's centre line, to 12 deep in the wall string's face.
        var straight = 16 + 836 + 12 - (190 - 15);
        Assert.Equal(straight + 296.8805, riser.Blank.Length, 1e-3);
        Assert.Equal(PartKind.BentRiser, riser.Kind);
        Assert.Equal(stair.Kit.Plan.Rise - 22, riser.Blank.Width, 1e-9);
    }

    [Fact]
    public void The_veneer_is_as_thick_as_asked_all_round_and_the_block_fills_it()
    {
        var kit = Straight().Kit;
        var end = Assert.Single(kit.Plan.RoundedEnds);
        var block = kit.Find("block-1");
        var inWorld = block.FaceSide.Outline.Moved(p => block.FaceSide.Frame.ToWorld(p).Plan);
        foreach (var p in end.Line(0).Flattened(0.001)) Assert.Equal(2, inWorld.DistanceTo(p), 1e-3);
        // Layers of at most 63 in a height of 220 - 22.
        Assert.Equal(kit.Plan.Rise - 22, block.FaceSide.Thickness, 1e-9);
    }

    [Fact]
    public void The_nosing_stands_evenly_in_front_of_the_riser_and_ends_with_cover_on_the_newel()
    {
        var kit = Straight().Kit;
        var end = Assert.Single(kit.Plan.RoundedEnds);
        var tread = kit.Find("tread-1");
        var outline = tread.FaceSide.Outline.Moved(p => tread.FaceSide.Frame.ToWorld(p).Plan);
        // Nearer the newel the tread's end there is nearer.
        foreach (var p in end.Line(0).Flattened(0.001).Where(p => p.Y < 190 - 20)) Assert.Equal(20, outline.DistanceTo(p), 1e-3);
        var newel = kit.Find("newel-bottom");
        var housing = newel.Cuts.Single(c => c.Id == "housing-tread-1-S");
        Assert.Equal(10, housing.Shape.Bounds.MinX, 1e-9);
        Assert.Equal(90, housing.Shape.Bounds.MaxX, 1e-9);
    }

    [Fact]
    public void The_other_hand_is_the_mirror_image()
    {
        var (left, right) = (Straight().Kit, Straight(Hand.Right).Kit);
        Assert.Equal(left.Parts.Select(p => p.Id), right.Parts.Select(p => p.Id));
        foreach (var (a, b) in left.Parts.Zip(right.Parts))
        {
            var (p, q) = (a.FaceSide.Outline.Moved(v => a.FaceSide.Frame.ToWorld(v).Plan).Bounds, b.FaceSide.Outline.Moved(v => b.FaceSide.Frame.ToWorld(v).Plan).Bounds);
            if (a.Kind is PartKind.Newel or PartKind.NewelString or PartKind.WallString) continue;
            Assert.Equal(-p.MinX, q.MaxX, 1e-9);
            Assert.Equal(p.MinY, q.MinY, 1e-9);
        }
    }

    [Fact]
    public void The_tread_is_closed_and_loses_at_its_bend_what_Pappus_says()
    {
        var kit = Straight().Kit;
        var end = Assert.Single(kit.Plan.RoundedEnds);
        var tread = kit.Find("tread-1");
        var solid = PartSolid.Of(tread, 0.001);
        Assert.True(solid.IsWatertight);
        const double R = 11;
        // Each corner taken: a square less a quarter circle, its centroid r (10 - 3 pi) / (12 - 3 pi) from the edge; two of them, along straight and bend.
        var taken = R * R * (1 - Math.PI / 4);
        var centroid = R * (10 - 3 * Math.PI) / (12 - 3 * Math.PI);
        var straight = tread.FaceSide.Outline.Bounds.Width - end.Radius - 20 + end.Back - end.Radius + 12;
        var expected = tread.FaceSide.Outline.Area * 22 - 2 * taken * (straight + Math.PI / 2 * (end.Radius + 20 - centroid));
        Assert.Equal(1, solid.Volume / expected, 1e-5);
    }

    /// <summary>A piece that is far from the other where it ought to touch is as wrong as one that is near and does not.</summary>
    [Theory]
    [InlineData("block-1", 40, "riser-1/block-1")]
    [InlineData("block-1", 5, "riser-1/block-1")]
    [InlineData("wedges-1", 6, "wedges-1/riser-1")]
    public void A_bite_out_of_a_face_that_ought_to_touch_fails_the_proof(string piece, double size, string joint)
    {
        var kit = Straight().Kit;
        Assert.True(Prover.Prove(kit).Holds);
        var part = kit.Find(piece);
        var outline = part.FaceSide.Outline;
        // At the bend of the block and on the front of the wedges: the place of the outline nearest to the front and furthest out.
        var end = Assert.Single(kit.Plan.RoundedEnds);
        var at = piece == "block-1"
            ? part.FaceSide.Frame.ToLocal(new(end.Centre.X + (end.Radius - 2) * Math.Sqrt(0.5) * end.Out.X, end.Centre.Y - (end.Radius - 2) * Math.Sqrt(0.5), 0)).Face
            : new Point2(outline.Bounds.Centre.X, outline.Bounds.MinY);
        var bitten = Region.Difference(outline, Path2.Circle(at, size)).MaxBy(p => p.Area)!;
        var spoilt = kit with { Parts = [.. kit.Parts.Select(p => p.Id == piece ? p with { Faces = p.Faces.SetItem(0, p.FaceSide with { Outline = bitten }) } : p)] };
        Assert.Contains(Prover.Prove(spoilt).Joints, j => j.Id == joint && !j.Holds);
    }

    /// <summary>Any flight whose foot has an open side and room for the round.</summary>
    [Fact]
    public void Any_flight_that_can_have_one_goes_together()
    {
        var proved = 0;
        Generated.Jobs.Holds(job =>
        {
            var asked = job with { BottomStep = new() { Shape = BottomShape.BullNose }, Layout = job.Layout with { Sequence = [new Flight(job.Layout.GoingsBefore + 2), .. job.Layout.Sequence.SkipWhile(i => i is Flight)] } };
            if (Stair.SetOut(asked).Value is not { Kit.Plan.RoundedEnds.IsEmpty: false } stair) return;
            var square = Stair.SetOut(asked with { BottomStep = new() }).Value!;
            // What pinches without the round pinches with it.
            var (with, without) = (Prover.Prove(stair.Kit), Prover.Prove(square.Kit));
            if (!without.Holds) return;
            Assert.True(with.Holds, string.Join("; ", with.Joints.Where(j => !j.Holds).Select(j => $"{j.Id} {j.Gap} {j.Kind}").Concat(with.Clashes.Concat(with.NewelCuts).Select(c => c.ToString()))
                .Concat(with.Blanks.Where(b => !b.Holds).Select(b => b.ToString()))));
            foreach (var part in stair.Kit.Parts.Where(p => p.Step == 1)) Assert.True(PartSolid.Of(part).IsWatertight, part.Id);
            Interlocked.Increment(ref proved);
        }, iter: 120);
        Assert.InRange(proved, 25, 120);
    }

    [Theory]
    [InlineData("wall", null, "RW2008")]
    [InlineData("open", 300.0, "RW2009")]
    public void What_cannot_be_is_told(string side, double? radius, string code)
    {
        var job = Samples.Job("straight-flight");
        job = job with { BottomStep = new() { Shape = BottomShape.BullNose, Radius = radius }, Sides = side == "wall" ? new(SideKind.Wall, SideKind.Wall) : job.Sides };
        var found = Stair.SetOut(job);
        Assert.Null(found.Value);
        Assert.Equal(code, Assert.Single(found.Findings).Code);
    }
}
