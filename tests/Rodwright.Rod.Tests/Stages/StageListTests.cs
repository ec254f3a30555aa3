using CsCheck;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Properties;
using Rodwright.Rod.Stages;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Stages;

public sealed class StageListTests
{
    public static TheoryData<string> All => [.. Samples.Names];

    [Theory, MemberData(nameof(All))]
    public void Every_line_of_the_finished_plan_is_drawn_in_some_stage(string sample)
    {
        var stair = RodJobs.Stair(sample);
        var drawn = RodStages.Of(stair).Stages.Where(s => s.Bench == Bench.Plan).SelectMany(s => s.Lines).Where(l => l.Kind == LineKind.LinedIn).SelectMany(l => l.Paths).ToList();
        var view = new PlanView(stair);
        var finished = view.Walls.Concat(view.Strings.Concat(view.Newels).Select(x => x.Outline)).Concat(view.Nosings.Select(n => n.Line))
            .Append(stair.Plan.WalkingLine).Concat(stair.Plan.RiserLines.Select(r => stair.Plan.FaceOf(r))).ToList();
        foreach (var path in finished) Assert.Contains(drawn, d => Same(d, path));
    }

    [Theory, MemberData(nameof(All))]
    public void Every_outline_and_cut_of_strings_newels_and_tapered_steps_is_drawn_in_some_stage(string sample)
    {
        var stair = RodJobs.Stair(sample);
        var list = RodStages.Of(stair);
        var drawn = list.Lines.Where(l => l.Kind == LineKind.LinedIn).SelectMany(l => l.Paths).ToList();
        foreach (var board in stair.Kit.Strings)
        {
            Assert.Contains(board.Outline, drawn);
            foreach (var housing in board.Housings) Assert.Contains(housing.Shape, drawn);
        }
        foreach (var newel in stair.Kit.Parts.Where(p => p.Kind == PartKind.Newel)) foreach (var cut in newel.Cuts) Assert.Contains(cut.Shape, drawn);
        foreach (var tread in stair.Kit.Parts.Where(p => p.Kind == PartKind.TaperedTread))
        {
            var edges = list.Stages.Where(s => s.Subject == tread.Id).SelectMany(s => s.Lines).SelectMany(l => l.Paths).ToList();
            for (var i = 0; i < tread.FaceSide.Outline.EdgeCount; i++)
            {
                var (a, b, _) = tread.FaceSide.Outline.Edge(i);
                Assert.Contains(edges, e => e.Vertices.Length == 2 && e.Vertices[0].At.DistanceTo(a) < 1e-6 && e.Vertices[1].At.DistanceTo(b) < 1e-6);
            }
        }
    }

    [Theory, MemberData(nameof(All))]
    public void Plan_comes_first_then_strings_newels_and_steps(string sample)
    {
        var benches = RodStages.Of(RodJobs.Stair(sample)).Stages.Select(s => s.Bench).ToList();
        Assert.Equal(benches.Order(), benches);
    }

    [Fact]
    public void Made_up_stairs_have_whole_instructions_on_every_line() => Generated.Jobs.Holds(
        job =>
        {
            if (Stair.SetOut(job).Value is not { } stair) return;
            var list = RodStages.Of(stair);
            AssertWhole(list);
        }, iter: 150);

    [Theory, MemberData(nameof(All))]
    public void Instructions_name_a_datum_a_distance_and_a_way(string sample) => AssertWhole(RodStages.Of(RodJobs.Stair(sample)));

    [Theory, MemberData(nameof(All))]
    public void The_same_stair_gives_the_same_list(string sample)
    {
        var (a, b) = (RodStages.Of(RodJobs.Stair(sample)), RodStages.Of(Stair.SetOut(Samples.Job(sample)).Value!));
        Assert.Equal(a.Lines.Select(Told), b.Lines.Select(Told));
    }

    [Fact]
    public void The_other_hand_is_the_same_list_mirrored() => Generated.Jobs.Holds(
        job =>
        {
            // A straight flight between two sides alike has no hand to speak of.
            if (job.Layout.Turn is null && job.Sides.Left == job.Sides.Right) return;
            var other = job with { Layout = job.Layout with { Hand = job.Layout.Hand == Hand.Left ? Hand.Right : Hand.Left }, Sides = new(job.Sides.Right, job.Sides.Left) };
            if (Stair.SetOut(job).Value is not { } a || Stair.SetOut(other).Value is not { } b) return;
            var (one, two) = (RodStages.Of(a), RodStages.Of(b));
            var pairs = one.Stages.Where(s => s.Bench is not (Bench.Newel or Bench.TaperedStep)).SelectMany(s => s.Lines.Select(l => (s.Bench, l)))
                .Zip(two.Stages.Where(s => s.Bench is not (Bench.Newel or Bench.TaperedStep)).SelectMany(s => s.Lines)).ToList();
            Assert.Equal(one.Lines.Count(), two.Lines.Count());
            foreach (var ((bench, l), r) in pairs)
            {
                Assert.Equal(l.Id, r.Id);
                Assert.Equal(l.Instruction.Measures.Select(m => m.Figure(Units.Millimetres)), r.Instruction.Measures.Select(m => m.Figure(Units.Millimetres)));
                Assert.Equal(Swapped(l.Instruction.What(Units.Millimetres)), r.Instruction.What(Units.Millimetres));
                // Strings keep their (s, z) for either hand; the plan is mirrored.
                for (var i = 0; i < l.Paths.Length; i++) Assert.True(Same(bench == Bench.Plan ? l.Paths[i].Mirrored() : l.Paths[i], r.Paths[i]), l.Id);
            }
        }, iter: 60);

    [Fact]
    public void A_right_hand_stair_is_told_by_its_own_hand()
    {
        var words = RodStages.Of(RodJobs.Stair("right-kite-top")).Lines.First(l => l.Id == "plan-walking/line").Instruction.What(Units.Millimetres);
        Assert.Contains("to the left, towards the wall", words, StringComparison.Ordinal);
        words = RodStages.Of(RodJobs.Stair("left-kite-low")).Lines.First(l => l.Id == "plan-walking/line").Instruction.What(Units.Millimetres);
        Assert.Contains("to the right, towards the wall", words, StringComparison.Ordinal);
    }

    private static string Swapped(string words) => SwappedWord(SwappedWord(words, "to the left", "to the right"), "left side", "right side");

    private static string SwappedWord(string words, string left, string right) =>
        words.Replace(left, "§", StringComparison.Ordinal).Replace(right, left, StringComparison.Ordinal).Replace("§", right, StringComparison.Ordinal);

    private static string Told(StageLine l) => $"{l.Id} {l.Name} {l.Kind} {l.Of} {l.Face} {l.Instruction.What(Units.Millimetres)} {l.Instruction.Reason} {l.Telling} "
        + string.Join("; ", l.Paths.Select(p => string.Join(" ", p.Vertices.Select(v => $"{Number.Exact(v.At.X)},{Number.Exact(v.At.Y)},{Number.Exact(v.Bulge)}"))));

    private static void AssertWhole(RodStageList list)
    {
        Assert.Equal(list.Lines.Count(), list.Lines.Select(l => l.Id).Distinct().Count());
        foreach (var stage in list.Stages) Assert.Equal(stage.Lines.Select(l => l.Kind).Order(), stage.Lines.Select(l => l.Kind));
        foreach (var line in list.Lines)
        {
            var how = line.Instruction;
            Assert.NotEmpty(line.Paths);
            Assert.NotEmpty(how.Measures);
            Assert.False(string.IsNullOrWhiteSpace(how.Act) || string.IsNullOrWhiteSpace(how.Why), line.Id);
            foreach (var measure in how.Measures)
            {
                Assert.True(double.IsFinite(measure.Distance) && measure.Distance >= 0, $"{line.Id}: {measure.Distance}");
                Assert.False(string.IsNullOrWhiteSpace(measure.Way) || string.IsNullOrWhiteSpace(measure.Label), line.Id);
                Assert.Contains(measure.Datum, how.What(Units.Millimetres), StringComparison.OrdinalIgnoreCase);
                Assert.Contains(Number.Print(measure.Distance), how.What(Units.Millimetres), StringComparison.Ordinal);
                Assert.Contains(measure.Way, how.What(Units.Millimetres), StringComparison.Ordinal);
            }
            foreach (var path in line.Paths) Assert.All(path.Vertices, v => Assert.True(double.IsFinite(v.At.X) && double.IsFinite(v.At.Y), line.Id));
        }
    }

    private static bool Same(Path2 a, Path2 b)
    {
        if (a.Closed != b.Closed || a.Vertices.Length != b.Vertices.Length || !Near(a.Bounds, b.Bounds) || Math.Abs(a.Length - b.Length) > 1e-6) return false;
        return a.Vertices.All(v => b.Vertices.Any(w => w.At.DistanceTo(v.At) < 1e-6));
    }

    private static bool Near(Box2 a, Box2 b) => Math.Abs(a.MinX - b.MinX) + Math.Abs(a.MinY - b.MinY) + Math.Abs(a.MaxX - b.MaxX) + Math.Abs(a.MaxY - b.MaxY) < 1e-6;
}
