using CsCheck;
using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Solids;
using Rodwright.Joinery.Tests.Solids;
using Rodwright.Properties;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Balustrades;

/// <summary>Handrails, base rails, balusters and caps of whole stairs.</summary>
public class BalustradeTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

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

    /// <summary>
    /// Worked out by hand for 14 risers of 2680 / 14 = 191.4286, going 240, pitch p = 0.797619 (38.577 degrees, 1 / cos 1.279139), both newels' centres on riser faces. The rail's top at s: 191.4286 + 900 + p (s + 20). The
    /// string above, 270 wide with a margin of 50: its lower edge 8 x 191.4286 + p (1440 - s) - 220 x 1.279139. They meet where 2 p s = 1291.208: s = 809.414. The rail, 45 x 1.279139 = 57.561 deep plumb, ends 57.561 / 2 p
    /// = 36.083 further on below. Nosings 5 and 6 (at 940 and 1180) lie past it.
    /// </summary>
    [Theory]
    [InlineData(Hand.Left)]
    [InlineData(Hand.Right)]
    public void A_lower_rail_is_scribed_to_the_lower_edge_of_the_string_that_comes_back_over_it(Hand hand)
    {
        var job = Samples.Job("dog-leg");
        var stair = With(job with { Layout = job.Layout with { Hand = hand }, Sides = hand == job.Layout.Hand ? job.Sides : new(job.Sides.Right, job.Sides.Left) });
        AssertProved(stair);
        var rail = stair.Kit.Find("handrail-1");
        var high = rail.FaceSide.Outline.Vertices.Select(v => v.At).OrderByDescending(p => p.Y).First();
        var low = rail.FaceSide.Outline.Vertices.Select(v => v.At).OrderByDescending(p => Math.Abs(p.X)).First();
        Assert.Equal(809.414, Math.Abs(high.X), 2e-3);
        Assert.Equal(845.497, Math.Abs(low.X), 2e-3);
        Assert.Equal(hand == Hand.Left, high.X > 0);
        // No mortice for it in the turn's newel; the joint is with the string.
        Assert.DoesNotContain(stair.Kit.Find("newel-turn").Cuts, c => c.Joint == "handrail-1/newel-turn");
        Assert.Contains(stair.Kit.Joints, j => j is { Id: "handrail-1/newel-string-2", Kind: JointKind.UnderString });
        var run = BalustradePlan.Of(stair.Kit.Plan)!.Rails.Single(r => r.Id == "handrail-1");
        Assert.Equal([5, 6], run.Stop!.Bare);
        Assert.Equal(low.X, (hand == Hand.Left ? 1 : -1) * run.To, 1e-6);
        Assert.Contains(stair.Findings, f => f is { Code: "RW4106", Severity: Severity.Advice } && f.Message.Contains("nosings 5, 6", StringComparison.Ordinal));
        // Past it the balusters come up under the string themselves, none further from the last than the sphere allows.
        var under = stair.Kit.Joints.Where(j => j.Kind == JointKind.UnderString && j.Male.StartsWith("baluster", StringComparison.Ordinal)).ToList();
        Assert.True(under.Count >= 2);
        Assert.InRange(BalustradePlan.Of(stair.Kit.Plan)!.RowOf(stair.Kit.Plan, run).Gap, 20, 99);
    }

    /// <summary>Both strings in one plane, and the rail's top comes under the upper one so near the newel that its lower edge still reaches it: it butts there, without a tenon.</summary>
    [Fact]
    public void A_rail_scribed_under_a_string_beside_the_newel_butts_there()
    {
        var kit = With(Samples.Job("double-kite")).Kit;
        Assert.Contains(kit.Joints, j => j is { Id: "handrail-1/newel-string-2", Kind: JointKind.UnderString });
        Assert.Contains(kit.Joints, j => j is { Id: "handrail-1/newel-turn", Kind: JointKind.RailToNewel });
        Assert.Contains(Stair.SetOut(Samples.Job("double-kite") with { Balustrade = new() }).Value!.Findings, f => f is { Code: "RW4106", Severity: Severity.Note });
    }

    /// <summary>A rail left a hair too long, or too short, does not close.</summary>
    [Theory]
    [InlineData(0.05)]
    [InlineData(-0.05)]
    public void The_proof_sees_a_rail_that_is_not_home_under_the_string(double off)
    {
        var kit = With(Samples.Job("dog-leg")).Kit;
        var rail = kit.Find("handrail-1");
        var moved = rail with { Faces = [rail.FaceSide with { Outline = rail.FaceSide.Outline.Moved(new Vector2(off, 0)) }] };
        Assert.False(Prover.Prove(kit with { Parts = kit.Parts.Replace(rail, moved) }).Joints.Single(j => j.Id == "handrail-1/newel-string-2").Holds);
    }

    /// <summary>
    /// Worked out by hand for rise 200, going 225, nosing 20, newel 90, last riser on the top newel's centre: root(200^2 + 225^2) = 301.0399. The line of the nosings lies 20 x 200 / 225 = 17.778 above the margin line; the
    /// rail's top 900 above it; a rail 45 high is 45 x 301.0399 / 225 = 60.208 high plumb.
    /// </summary>
    [Fact]
    public void The_rail_of_a_flight_is_parallel_to_its_margin_line()
    {
        var kit = With(Samples.Job("left-kite-low")).Kit;
        var plan = BalustradePlan.Of(kit.Plan)!;
        var rail = plan.Rails.Single(r => r.Id == "handrail-2");
        Assert.Equal(200.0 / 225, rail.Slope, 1e-12);
        Assert.Equal(41.6335, rail.Pitch.Degrees, 1e-4);
        Assert.NotEmpty(rail.Heights);
        Assert.All(rail.Heights, h => Assert.Equal(900, h.Above, 1e-9));
        var part = kit.Find("handrail-2");
        var outline = part.FaceSide.Outline.Vertices.Select(v => v.At).ToList();
        // Plumb at the shoulders: both edges end over one another, 60.208 apart.
        var shoulder = outline.Where(p => Math.Abs(p.X - rail.From) < 1e-9).ToList();
        Assert.Equal(60.208, shoulder.Max(p => p.Y) - shoulder.Min(p => p.Y), 1e-3);
        Assert.Equal(45, part.Blank.Width, 1e-9);
        Assert.Equal(68, part.Blank.Thickness, 1e-9);
        // From shoulder to shoulder along the pitch, at the long points of both tenons: 30 more at each end, and what the slope adds over the rail's height.
        var board = kit.Strings.Single(b => b.Site.Id == rail.String!.Id);
        Assert.Equal(board.Site.Upper.At - 90, rail.Clear, 1e-9);
    }

    /// <summary>
    /// By hand: from the groove in the base rail to the groove in the handrail, plumb: 900 + 17.778 - 60.208 + 8 x 1.33796 - (50 + 32 - 8) x 1.33796 = 769.265; a baluster of 41 is 41 x 200 / 225 = 36.444 longer
    /// between its long points.
    /// </summary>
    [Fact]
    public void Balusters_are_as_long_as_between_the_grooves_and_bevelled_to_the_pitch()
    {
        var kit = With(Samples.Job("left-kite-low")).Kit;
        var balusters = kit.Parts.Where(p => p.Kind == PartKind.Baluster).ToList();
        Assert.NotEmpty(balusters);
        foreach (var baluster in balusters)
        {
            Assert.Equal(769.265 + 36.444, baluster.Blank.Length, 2e-3);
            var sides = baluster.FaceSide.Outline.Vertices.GroupBy(v => Math.Round(v.At.X, 6)).ToList();
            Assert.Equal(2, sides.Count);
            Assert.All(sides, s => Assert.Equal(769.265, s.Max(v => v.At.Y) - s.Min(v => v.At.Y), 2e-3));
        }
        // All of one shape: one mark for all.
        Assert.Equal(["BA1"], balusters.Select(b => b.Mark).Distinct());
    }

    /// <summary>The least number of balusters of 41 that leaves no gap above 99: in 1000 clear seven, (1000 - 287) / 8 = 89.125 apart; six would leave 107.714.</summary>
    [Theory]
    [InlineData(1000, 41, 99, 7, 89.125)]
    [InlineData(139, 41, 99, 1, 49)]
    [InlineData(99, 41, 99, 0, 99)]
    [InlineData(239, 41, 99, 1, 99)]
    [InlineData(239.1, 41, 99, 2, 52.3667)]
    public void Balusters_stand_at_equal_gaps_and_are_the_fewest_that_stop_the_sphere(double clear, double side, double greatest, int count, double gap)
    {
        var row = BalusterRow.Of(clear, side, greatest);
        Assert.Equal(count, row.Count);
        Assert.Equal(gap, row.Gap, 1e-4);
        Assert.Equal(clear, row.Count == 0 ? row.Gap : row.Start(row.Count - 1) + side + row.Gap, 1e-9);
    }

    /// <summary>A newel's head stands its practice above the highest rail at its centre; the cap's recess of 8 takes its end.</summary>
    [Fact]
    public void A_newel_is_as_high_as_its_highest_rail_asks_and_its_cap_sits_on_it()
    {
        var kit = With(Samples.Job("left-kite-low")).Kit;
        var rails = BalustradePlan.Of(kit.Plan)!.Rails;
        foreach (var site in kit.Plan.Newels)
        {
            var newel = kit.Find(site.Id);
            var highest = rails.Where(r => r.Lower == site.Id || r.Upper == site.Id).Max(r => r.TopAt(r.Centre.Station(site.Centre)));
            // At the upper floor it stands as high above that floor at least.
            if (site.Id == "newel-top") highest = Math.Max(highest, 2600 + 900);
            var head = newel.FaceSide.Frame.Origin.Z + newel.Blank.Length;
            Assert.Equal(highest + 100, head, 1e-9);
            var cap = PartSolid.Of(kit.Find("cap-" + site.Id)).Placed(kit.Find("cap-" + site.Id).FaceSide.Frame).Bounds;
            Assert.Equal(head - 8, cap.Min.Z, 1e-6);
            Assert.Equal(head - 8 + 25 + 20, cap.Max.Z, 1e-6);
            Assert.Equal(site.Centre.X - 55, cap.Min.X, 1e-6);
            Assert.Equal(site.Centre.Y + 55, cap.Max.Y, 1e-6);
        }
    }

    [Theory]
    [InlineData(LandingWay.Away)]
    [InlineData(LandingWay.On)]
    public void The_upper_landing_has_a_level_balustrade_to_half_a_newel_on_the_wall(LandingWay way)
    {
        var stair = With(Samples.Job("straight-flight"), new() { UpperLanding = new() { Length = 1400, Way = way }, LandingHeight = 950 });
        AssertProved(stair);
        var rail = BalustradePlan.Of(stair.Kit.Plan)!.Rails.Single(r => r.Kind == RailKind.Landing);
        Assert.Equal(0, rail.Slope);
        Assert.Equal(stair.Job.Survey.Height + 950, rail.TopAt(0), 1e-9);
        // From the newel's face at 45 to the face of the half newel, 45 off the wall.
        Assert.Equal(1400 - 90, rail.Clear, 1e-9);
        var wall = stair.Kit.Find(BalustradePlan.WallNewel);
        foreach (var part in new[] { wall, stair.Kit.Find("cap-" + wall.Id), stair.Kit.Find("landing-rail-1"), stair.Kit.Find("landing-base-1") }) Assert.True(PartSolid.Of(part).IsWatertight, part.Id);
        Assert.Equal(1, PartSolid.Of(wall).Volume / PartVolume.Of(wall), 1e-6);
        Assert.Equal(45.0 * 90 * (950 + 100), wall.FaceSide.Outline.Area * wall.FaceSide.Thickness, 1e-3);
    }

    [Fact]
    public void A_half_landing_round_a_well_has_a_level_rail_between_its_newels()
    {
        var stair = With(Samples.Job("open-well"));
        var balustrade = BalustradePlan.Of(stair.Kit.Plan)!;
        Assert.Contains(balustrade.Rails, r => r.Kind == RailKind.Flight);
        foreach (var rail in balustrade.Rails.Where(r => r.Kind == RailKind.Landing)) Assert.Equal(rail.Floor + 900, rail.TopAt(rail.From), 1e-9);
    }

    /// <summary>Where the taper is shared the narrow steps of the newel string are steeper than the flight: a straight rail stands above some of them, nowhere below.</summary>
    [Fact]
    public void A_straight_rail_over_balanced_steps_is_never_low()
    {
        foreach (var name in Samples.Names)
            foreach (var rail in BalustradePlan.Of(With(Samples.Job(name)).Kit.Plan)!.Rails)
                Assert.All(rail.Heights.Where(h => h.Riser > 0), h => Assert.True(h.Above >= (rail.Kind == RailKind.Flight ? Samples.Job(name).Practice.RailHeight : 0) - 1e-6, $"{name} {rail.Id} {h}"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_other_hand_is_the_mirror_image(string name)
    {
        var job = Samples.Job(name);
        // Of a stair whose turns change hand, and of one without a hand, there is no simple twin here.
        if (job.Layout.Sequence.OfType<Turn>().Any(t => t.Hand is not null) || !job.HasNewelString) return;
        var other = job with { Layout = job.Layout with { Hand = job.Layout.Hand == Hand.Left ? Hand.Right : Hand.Left }, Sides = new(job.Sides.Right, job.Sides.Left) };
        var (a, b) = (With(job).Kit, With(other).Kit);
        Assert.Equal(a.Parts.Select(p => p.Id), b.Parts.Select(p => p.Id));
        foreach (var (one, two) in a.Parts.Zip(b.Parts).Where(p => !p.First.Kind.IsOfStep()))
        {
            var (s, t) = (PartSolid.Of(one).Placed(one.FaceSide.Frame), PartSolid.Of(two).Placed(two.FaceSide.Frame));
            Assert.Equal(-s.Bounds.Min.X, t.Bounds.Max.X, 1e-6);
            Assert.Equal(s.Bounds.Min.Y, t.Bounds.Min.Y, 1e-6);
            Assert.Equal(s.Bounds.Max.Z, t.Bounds.Max.Z, 1e-6);
            Assert.Equal(1, s.Volume / t.Volume, 1e-9);
        }
    }

    [Fact]
    public void Any_stair_with_a_balustrade_goes_together_or_says_what_pinches()
    {
        var proved = 0;
        Generated.Jobs.Holds(job =>
        {
            if (Stair.SetOut(job).Value is not { } plain || !Prover.Prove(plain.Kit).Holds) return;
            if (Stair.SetOut(job with { Balustrade = new() }).Value is not { } stair) return;
            if (stair.Findings.Any(f => f.Code is "RW4101" or "RW4104" or "RW4105")) return;
            var proof = Prover.Prove(stair.Kit);
            Assert.True(proof.Holds, string.Join("; ", proof.Joints.Where(j => !j.Holds).Select(j => $"{j.Id} {j.Gap} {j.Kind} {j.Reached}").Concat(proof.Clashes.Concat(proof.NewelCuts).Select(c => c.ToString()))
                .Concat(proof.Blanks.Where(b => !b.Holds).Select(b => b.ToString())).Take(5)) + "\n" + JobFile.Write(job));
            Interlocked.Increment(ref proved);
        }, iter: 200);
        Assert.InRange(proved, 30, 200);
    }

    /// <summary>On every wall, whatever is asked for: pieces as long as one straight rail follows the nosings, on brackets no further apart than 900 along the rail.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Wall_rails_stand_above_the_nosings_on_brackets(string name)
    {
        var stair = With(Samples.Job(name), new() { WallRail = new() { Wanted = WallRailWanted.Always } });
        AssertProved(stair);
        foreach (var rail in BalustradePlan.Of(stair.Kit.Plan)!.Rails.Where(r => r.Kind == RailKind.Wall))
        {
            var wanted = stair.Job.Practice.RailHeight;
            Assert.All(rail.Heights, h => Assert.InRange(h.Above, wanted - 1e-6, wanted + 25 + 1e-6));
            var part = stair.Kit.Find(rail.Id);
            Assert.Equal(1, PartSolid.Of(part).Volume / (rail.Clear * part.Blank.Width / rail.Pitch.Cosine * part.Blank.Thickness), 1e-9);
            var brackets = stair.Kit.Joints.Where(j => j.Female == rail.Id).Select(j => stair.Kit.Find(j.Male)).ToList();
            Assert.True(brackets.Count >= 2);
            var middles = brackets.Select(b => Math.Abs(b.FaceSide.Outline.Bounds.Centre.X)).Order().ToList();
            Assert.All(middles.Zip(middles.Skip(1)), m => Assert.True((m.Second - m.First) / rail.Pitch.Cosine <= 900 + 1e-6));
        }
    }

    /// <summary>England asks for one side below 1 m and both from 1 m on; an 1100 wide flight with one open side gets a rail on its wall.</summary>
    [Theory]
    [InlineData(860, 0)]
    [InlineData(1100, 1)]
    public void A_wall_rail_is_made_where_the_regulation_asks_for_a_second_side(double width, int rails)
    {
        var stair = With(Samples.Job("straight-flight") with { Regulation = "england-2013-private", Width = width });
        Assert.Equal(rails, stair.Kit.Parts.Count(p => p.Kind == PartKind.WallRail));
        Assert.DoesNotContain(stair.Findings, f => f.Code is "RW3040" or "RW3041" or "RW3043" or "RW3045");
        AssertProved(stair);
    }
}
