using CsCheck;
using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Solids;
using Rodwright.Joinery.Tests.Solids;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Surveys;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Wells;

/// <summary>Nosing and apron lining round a surveyed well.</summary>
public class WellEdgeTests
{
    // From the party wall to the trimmer the stair arrives at, mm: see ArrivesAt.
    private const double Deep = 232;

    private static Job Loft(Hand hand) => Samples.Job("loft-under-slope") is var job ? job with { Layout = job.Layout with { Hand = hand }, Sides = Sides.For(hand), LandingEdge = new() } : null!;

    /// <summary>Square to the party wall, from it to the back of the last riser with its packing.</summary>
    private static double ArrivesAt(Job job)
    {
        var plan = Stair.SetOut(job).Value!.Plan;
        var last = plan.RiserLines[^1];
        return RoomFrame.Of(plan).ToRoom(last.Walking + (job.Practice.Riser + job.Practice.Packing) * last.Up).Y;
    }

    /// <summary>The well as wide as the stair needs it.</summary>
    private static Job Fitting(Hand hand)
    {
        var job = Loft(hand);
        return job with { Survey = job.Survey with { Well = new() { Length = Readings.Of(2456), Width = Readings.Of(ArrivesAt(job)), Trimmer = Readings.Of(Deep) } } };
    }

    /// <summary>A well with the landing let into it: the floor stands out where the stair arrives, and the well goes 500 further beside it.</summary>
    private static Job Stepped(Hand hand)
    {
        var job = Loft(hand);
        var (far, near, wide) = (3743.0, 1287.0, ArrivesAt(job));
        return job with
        {
            Survey = job.Survey with
            {
                Well = new() { Corners = [new(near, 0), new(far, 0), new(far, wide), new(far - 1500, wide), new(far - 1500, wide + 500), new(near, wide + 500)], Trimmer = Readings.Of(Deep) },
            },
        };
    }

    public static TheoryData<string, Hand> All
    {
        get
        {
            var data = new TheoryData<string, Hand>();
            foreach (var name in (string[])["as measured", "fitting", "stepped", "railed", "slanted", "open all round"])
                foreach (var hand in Enum.GetValues<Hand>()) data.Add(name, hand);
            return data;
        }
    }

    private static Job Named(string name, Hand hand) => name switch
    {
        "as measured" => Loft(hand),
        "fitting" => Fitting(hand),
        "stepped" => Stepped(hand),
        "railed" => Fitting(hand) with { Balustrade = new() { UpperLanding = new() { Length = 1500 } } },
        "slanted" => Stepped(hand) is var job ? job with { Survey = job.Survey with { Well = job.Survey.Well! with { Corners = [.. job.Survey.Well.Corners.Take(5), new(job.Survey.Well.Corners[5].X + 300, job.Survey.Well.Corners[5].Y)] } } } : null!,
        _ => Fitting(hand) is var open ? open with { Survey = open.Survey with { Well = new() { Along = 900, Out = 100, Length = Readings.Of(2600), Width = Readings.Of(2100), Trimmer = Readings.Of(Deep) } } } : null!,
    };

    [Theory]
    [MemberData(nameof(All))]
    public void They_are_proved_and_closed(string name, Hand hand)
    {
        var stair = Stair.SetOut(Named(name, hand)).Value!;
        var linings = stair.Kit.Parts.Where(p => p.Kind is PartKind.Apron or PartKind.LandingNosing).ToList();
        Assert.NotEmpty(linings);
        Assert.Equal(linings.Count, linings.Select(p => p.Mark).Distinct().Count());
        var proof = Prover.Prove(stair.Kit);
        Assert.All(proof.Joints, j => Assert.True(j.Holds, $"{j.Id}: {j.Gap} ({j.Kind})"));
        Assert.True(proof.Clashes.IsEmpty, string.Join("; ", proof.Clashes));
        Assert.All(proof.Blanks, b => Assert.True(b.Holds, $"{b.Part}: {b.Outside}"));
        foreach (var part in linings)
        {
            var solid = PartSolid.Of(part);
            Assert.True(solid.IsWatertight, part.Id);
            Assert.Equal(1, solid.Volume / PartVolume.Of(part), 1e-4);
        }
    }

    /// <summary>Whatever room: its corners close, and nothing of it runs into the stair.</summary>
    [Fact]
    public void They_close_in_made_up_rooms_and_clear_the_stair()
    {
        var (made, corners) = (0, 0);
        Rooms.Jobs.Holds(job =>
        {
            if (Stair.SetOut(job with { LandingEdge = new(), Balustrade = null }).Value is not { } stair) return;
            var linings = stair.Kit.Parts.Where(p => p.Kind is PartKind.Apron or PartKind.LandingNosing).Select(p => p.Id).ToHashSet();
            Interlocked.Add(ref made, linings.Count);
            var proof = Prover.Prove(stair.Kit);
            foreach (var joint in proof.Joints.Where(j => linings.Contains(j.Male)))
            {
                if (joint.Kind is "mitred" or "butted") Interlocked.Increment(ref corners);
                Assert.True(joint.Holds, $"{joint.Id}: {joint.Gap} ({joint.Kind})");
            }
            Assert.DoesNotContain(proof.Clashes, c => linings.Contains(c.First) || linings.Contains(c.Second));
        }, iter: 120);
        Assert.True(made > 100 && corners > 20, $"{made} pieces, {corners} corners");
    }

    /// <summary>The other hand's pieces are these mirrored: the same sizes under the same marks.</summary>
    [Theory]
    [InlineData("as measured")]
    [InlineData("fitting")]
    [InlineData("stepped")]
    [InlineData("slanted")]
    public void The_other_hand_has_the_same_pieces(string name)
    {
        Assert.Equal(Sizes(Hand.Left), Sizes(Hand.Right));

        List<string> Sizes(Hand hand) => [.. Stair.SetOut(Named(name, hand)).Value!.Kit.Parts.Where(p => p.Kind is PartKind.Apron or PartKind.LandingNosing)
            .Select(p => $"{p.Mark} {Number.Print(p.Blank.Length, 4)} {Number.Print(p.Blank.Width, 4)} {Number.Print(PartVolume.Of(p), 1)}")];
    }

    /// <summary>
    /// By hand: packing 6, lining 9, nosing 20 before it, 95 wide. The edge across the flight runs from the edge beside the arrival to the party wall: its lining is butted against the other's face, 15 from the edge,
    /// and its nosing mitred there from 35 in front of the edge to 60 behind it. 232 to the ceiling and 10 past it, less 22 of nosing, is 220.
    /// </summary>
    [Theory]
    [InlineData(Hand.Left)]
    [InlineData(Hand.Right)]
    public void Sizes_follow_from_the_well(Hand hand)
    {
        var job = Fitting(hand);
        var (stair, wide) = (Stair.SetOut(job).Value!, job.Survey.Well!.Width.Mean);
        var (apron, nosing) = (stair.Kit.Find("apron-2"), stair.Kit.Find("landing-nosing-2"));
        Assert.Equal((wide - 15, 220, 9), (Math.Round(apron.Blank.Length, 6), Math.Round(apron.Blank.Width, 6), Math.Round(apron.Blank.Thickness, 6)), (a, b) => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) + Math.Abs(a.Item3 - b.Item3) < 1e-5);
        Assert.Equal(wide + 60, nosing.Blank.Length, 1e-6);
        Assert.Equal((95, 22), (Math.Round(nosing.Blank.Width, 6), Math.Round(nosing.Blank.Thickness, 6)));
        Assert.Equal(95 * (wide + 60 + wide - 35) / 2, nosing.FaceSide.Outline.Area, 1e-3);
        var (low, high) = (apron.FaceSide.Outline.Bounds.MinY, apron.FaceSide.Outline.Bounds.MaxY);
        Assert.Equal((job.Survey.Height - Deep - 10, job.Survey.Height - 22), (Math.Round(low, 6), Math.Round(high, 6)));
        // Its face looks into the well, 15 in front of the edge.
        var frame = RoomFrame.Of(stair.Plan);
        var at = frame.ToRoom(apron.FaceSide.Frame.ToWorld(apron.FaceSide.Outline.Bounds.Centre).Plan);
        var near = WellShape.Of(job.Survey.Well, stair.Plan, frame).Min(p => p.X);
        Assert.Equal(near + 15, at.X, 1e-6);
        Assert.Contains(stair.Kit.Joints, j => j is { Id: "apron-2/apron-1", Kind: JointKind.EdgeCorner });
    }

    [Fact]
    public void A_given_depth_wins_over_the_wells()
    {
        var stair = Stair.SetOut(Fitting(Hand.Left) with { LandingEdge = new() { Depth = 260 } }).Value!;
        Assert.All(stair.Kit.Parts.Where(p => p.Kind == PartKind.Apron), p => Assert.Equal(260, p.Blank.Width, 1e-6));
    }

    /// <summary>Walls stand on two sides; a third is where the stair arrives and, beside it, open.</summary>
    [Fact]
    public void Nothing_is_made_on_a_wall_nor_where_the_stair_arrives()
    {
        var plan = Stair.SetOut(Fitting(Hand.Left)).Value!.Plan;
        var frame = RoomFrame.Of(plan);
        var edges = WellEdges.Of(plan);
        Assert.Equal(2, edges.Length);
        foreach (var edge in edges)
        {
            var (a, b) = (frame.ToRoom(edge.Line.At(edge.From)), frame.ToRoom(edge.Line.At(edge.To)));
            // Neither along the party wall nor at the eaves wall, 3743 along it.
            Assert.False(Math.Max(a.Y, b.Y) < 100 || Math.Min(a.X, b.X) > 3600);
            // The flight is 850 wide over its strings, its newel 90, its middle on the inner string's: what is open begins beyond it.
            if (Math.Abs(a.Y - b.Y) < 1) Assert.InRange(Math.Max(a.X, b.X), 3743 - 850 - 60, 3743 - 850 + 20);
        }
    }

    /// <summary>Inside corners are butted, so linings keep square ends; where the floor stands out both are mitred through their thickness of 9: 45 degrees.</summary>
    [Fact]
    public void Linings_are_mitred_where_the_floor_stands_out()
    {
        var kit = Stair.SetOut(Stepped(Hand.Left)).Value!.Kit;
        var mitred = kit.Parts.Where(p => p.Kind == PartKind.Apron && p.Faces.Length == 2).ToList();
        Assert.Equal(2, mitred.Count);
        Assert.All(mitred, p => Assert.Equal(9 * p.Blank.Length - 9 * 9 / 2.0, p.Faces[1].Outline.Area, 1e-6));
        Assert.Equal(4, kit.Parts.Count(p => p.Kind == PartKind.Apron));
    }

    [Fact]
    public void Without_walls_nothing_says_which_edges_are_open()
    {
        var job = Samples.Job("feet-and-inches") with { LandingEdge = new() };
        var stair = Stair.SetOut(job).Value!;
        Assert.DoesNotContain(stair.Kit.Parts, p => p.Kind == PartKind.Apron);
        Assert.Contains(stair.Findings, f => f.Code == "RW4108");
        Assert.DoesNotContain(stair.Findings, f => f.Code == "RW4107");
    }

    [Theory]
    [InlineData("as measured", true)]
    [InlineData("fitting", false)]
    public void A_stair_that_stops_short_of_its_well_is_told(string name, bool told) =>
        Assert.Equal(told, Stair.SetOut(Named(name, Hand.Left)).Value!.Findings.Any(f => f.Code == "RW4109"));

    [Fact]
    public void A_corner_that_gapes_does_not_close()
    {
        var kit = Stair.SetOut(Fitting(Hand.Left)).Value!.Kit;
        foreach (var id in (string[])["apron-2", "landing-nosing-2"])
        {
            var piece = kit.Find(id);
            var moved = piece with { Faces = [piece.FaceSide with { Outline = piece.FaceSide.Outline.Moved(new Vector2(-0.05, 0)) }] };
            Assert.False(Prover.Prove(kit with { Parts = kit.Parts.Replace(piece, moved) }).Joints.Single(j => j.Id.StartsWith(id + "/" + id[..^1], StringComparison.Ordinal)).Holds, id);
        }
    }
}
