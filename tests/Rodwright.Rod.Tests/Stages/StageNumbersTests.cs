using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Stages;
using Rodwright.Rod.Things;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Stages;

public sealed class StageNumbersTests
{
    private const double Close = 1e-6;

    public static TheoryData<string> All => [.. Samples.Names];

    private static StageLine Line(Stair stair, string id) => RodStages.Of(stair).Lines.Single(l => l.Id == id);

    private static double Only(StageLine line) => Assert.Single(line.Instruction.Measures).Distance;

    [Fact]
    public void The_published_check_values_of_a_kite_turn_are_told()
    {
        // setting-out.md 2.2, by hand: h = 45, t_n = 32, C = 796, e = 30 both, n = 3.
        var stair = RodJobs.Stair("left-kite-low");
        Assert.Equal(414, Only(Line(stair, "plan-walking/line")), Close);
        Assert.Equal(233.728, Only(Line(stair, "plan-turn-4/step")), 0.0005);
        Assert.Equal(233.728, Only(Line(stair, "plan-turn-5/step")), 0.0005);
        Assert.Equal(50, Only(Line(stair, "plan-turn-4/narrow")), 0.0005);
        Assert.Equal(100, Only(Line(stair, "plan-turn-5/narrow")), 0.0005);
        // From riser 3 at y = -30 to the second riser's end at y = 449.175, and 725.65 further round the corner.
        Assert.Equal(479.175, Only(Line(stair, "plan-turn-4/face")), 0.001);
        Assert.Equal(479.175 + 725.65, Only(Line(stair, "plan-turn-5/face")), 0.01);
        Assert.Contains("710.3", Line(stair, "plan-turn-4/step").Instruction.Why, StringComparison.Ordinal);
        Assert.Contains("2 × M / 3 = 100", Line(stair, "plan-turn-5/narrow").Instruction.Why, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(All))]
    public void Goings_run_from_one_datum_and_land_on_the_plan(string sample)
    {
        var stair = RodJobs.Stair(sample);
        var lines = RodStages.Of(stair).Stages.Where(s => s.Id == "plan-goings").SelectMany(s => s.Lines).ToList();
        foreach (var line in lines)
        {
            var measure = Assert.Single(line.Instruction.Measures);
            var datum = int.Parse(measure.Datum.Split(' ')[1].Split('\'')[0], System.Globalization.CultureInfo.InvariantCulture);
            var k = int.Parse(line.Name.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal((k - datum) * stair.Plan.Going, measure.Distance, Close);
            Assert.Equal(Math.Abs((stair.Plan.Riser(k).Outer - stair.Plan.Riser(datum).Outer).Dot(stair.Plan.Riser(datum).Up)), measure.Distance, Close);
        }
        var tapered = stair.Plan.Turns.Sum(t => Math.Max(0, t.Steps.Length - 1));
        var ends = RodStages.Of(stair).Stages.Single(s => s.Id == "plan-ends").Lines.Length;
        Assert.Equal(stair.Plan.Risers, lines.Count + tapered + ends);
    }

    [Theory, MemberData(nameof(All))]
    public void Riser_lines_stand_at_their_ordinates_and_levels_at_k_times_the_rise(string sample)
    {
        var stair = RodJobs.Stair(sample);
        var stages = RodStages.Of(stair).Stages;
        foreach (var board in stair.Kit.Strings)
        {
            if (stages.SingleOrDefault(s => s.Id == $"{board.Part.Id}-risers") is not { } risers) continue;
            var levels = stages.Single(s => s.Id == $"{board.Part.Id}-heights");
            var floor = stages.Single(s => s.Id == $"{board.Part.Id}-floor").Lines[0].Paths[0].Vertices[0].At.Y;
            foreach (var line in risers.Lines)
            {
                var k = int.Parse(line.Name.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
                var pitch = board.PitchPoints.Single(p => p.Riser == k);
                var measure = Assert.Single(line.Instruction.Measures);
                Assert.Equal(pitch.At.X, measure.Back ? -measure.Distance : measure.Distance, Close);
                Assert.All(line.Paths[0].Vertices, v => Assert.Equal(pitch.At.X, v.At.X, Close));
                var level = levels.Lines.Single(l => l.Name == $"level {k}");
                Assert.Equal(k * stair.Plan.Rise - floor, Only(level), Close);
                Assert.All(level.Paths[0].Vertices, v => Assert.Equal(k * stair.Plan.Rise, v.At.Y, Close));
            }
        }
    }

    [Theory, MemberData(nameof(All))]
    public void The_upper_edge_is_told_at_the_margin_and_the_lower_where_it_is_drawn(string sample)
    {
        var stair = RodJobs.Stair(sample);
        foreach (var board in stair.Kit.Strings)
        {
            var edges = RodStages.Of(stair).Lines.Where(l => l.Id.EndsWith($"-edges/{board.Part.Id}-upper", StringComparison.Ordinal) || l.Id.EndsWith($"-edges/{board.Part.Id}-lower", StringComparison.Ordinal)).ToList();
            Assert.Equal(2, edges.Count);
            Assert.All(edges[0].Instruction.Measures, m => Assert.Equal(stair.Job.Practice.Margin, m.Distance, 1e-4));
            Assert.All(edges[1].Instruction.Measures, m => Assert.True(m.Distance >= board.Site.Width - stair.Job.Practice.Margin - 1e-4, $"{board.Part.Id}: {m.Distance}"));
            // Before they are eased the edges have no arcs, and their ends are those of the finished edges.
            Assert.All(edges, e => Assert.All(e.Paths[0].Vertices, v => Assert.Equal(0, v.Bulge)));
            Assert.True(edges[0].Paths[0].Vertices[0].At.IsSame(board.UpperEdge.Vertices[0].At));
            Assert.True(edges[1].Paths[0].Vertices[^1].At.IsSame(board.LowerEdge.Vertices[^1].At));
        }
    }

    [Theory, MemberData(nameof(All))]
    public void Tenons_are_told_by_their_band_thirds_length_and_pegs(string sample)
    {
        var stair = RodJobs.Stair(sample);
        var told = 0;
        var lines = RodStages.Of(stair).Lines.ToList();
        foreach (var (board, tenon) in stair.Kit.Strings.SelectMany(b => b.Tenons.Select(t => (b, t))))
        {
            var end = tenon.IsUpper ? "upper" : "lower";
            var cuts = lines.Where(l => l.Id.Contains("-cuts/", StringComparison.Ordinal) && ThingId.PartOf(l.Of) == board.Part.Id).ToList();
            var band = cuts.Single(l => l.Id.EndsWith($"-band-{end}", StringComparison.Ordinal));
            var whole = Signed(band, 1) - Signed(band, 0);
            Assert.Equal(tenon.Top - tenon.Bottom, whole, Close);
            var pair = cuts.Single(l => l.Id.EndsWith($"-tenons-{end}", StringComparison.Ordinal));
            Assert.Equal([tenon.Length, tenon.Haunch, whole / 3], pair.Instruction.Measures.Select(m => m.Distance), (a, b) => Math.Abs(a - b) < Close);
            var pegs = cuts.Single(l => l.Id.EndsWith($"-pegs-{end}", StringComparison.Ordinal));
            Assert.Equal(tenon.PegBack - tenon.Practice.Draw, pegs.Instruction.Measures[0].Distance, Close);
            Assert.Equal(tenon.PegHeights[1] - tenon.PegHeights[0], Signed(pegs, 2) - Signed(pegs, 1), Close);
            told++;
        }
        Assert.Equal(2 * stair.Kit.Strings.Count(b => !b.Site.IsWall) + stair.Kit.Strings.Where(b => b.Site.IsWall).Sum(b => b.Tenons.Length), told);

        static double Signed(StageLine line, int i) => line.Instruction.Measures[i] is var m && m.Back ? -m.Distance : m.Distance;
    }

    [Theory, MemberData(nameof(All))]
    public void Newel_cuts_are_told_where_the_kit_has_them(string sample)
    {
        var stair = RodJobs.Stair(sample);
        var stages = RodStages.Of(stair).Stages;
        foreach (var newel in stair.Kit.Parts.Where(p => p.Kind == Joinery.Parts.PartKind.Newel))
        {
            var lines = stages.Where(s => s.Subject == newel.Id && (s.Id.EndsWith("-housings", StringComparison.Ordinal) || s.Id.EndsWith("-mortices", StringComparison.Ordinal))).SelectMany(s => s.Lines).ToList();
            Assert.Equal(newel.Cuts.Length, lines.Count);
            foreach (var cut in newel.Cuts)
            {
                var line = lines.Single(l => l.Id.EndsWith("/" + cut.Id, StringComparison.Ordinal));
                Assert.Equal(cut.Face, line.Face);
                Assert.Same(cut.Shape, line.Paths.Single());
                Assert.Equal(cut.Kind == Joinery.Parts.CutKind.Bore ? cut.Shape.Bounds.Centre.Y : cut.Shape.Bounds.MaxY, line.Instruction.Measures[^1].Distance, Close);
            }
        }
    }

    [Theory, MemberData(nameof(All))]
    public void Corners_of_tapered_steps_are_told_on_their_board(string sample)
    {
        var stair = RodJobs.Stair(sample);
        foreach (var tread in stair.Kit.Parts.Where(p => p.Kind == Joinery.Parts.PartKind.TaperedTread))
        {
            var lines = RodStages.Of(stair).Stages.Single(s => s.Id == $"{tread.Id}-outline").Lines;
            var corners = tread.FaceSide.Outline.Vertices.Select(v => v.At).ToList();
            Assert.Equal(corners.Count, lines.Length);
            foreach (var line in lines)
            {
                var (along, up) = (line.Instruction.Measures[0], line.Instruction.Measures[1]);
                var at = new Point2(along.Distance + tread.Blank.Corner.X, up.Back ? -up.Distance : up.Distance);
                Assert.Contains(corners, c => c.DistanceTo(at) < 0.05);
                Assert.True(line.Paths[0].Vertices[0].At.DistanceTo(at) < 0.05);
            }
        }
    }
}
