using CsCheck;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;
using Rodwright.Testing;
using Rodwright.Workshop.Pictures;
using Rodwright.Workshop.Pictures.Clauses;

namespace Rodwright.Workshop.Tests.Pictures;

public sealed class ClausePictureTests
{
    [Theory]
    [MemberData(nameof(Set.Samples), MemberType = typeof(Set))]
    public void Under_every_regulation_every_measured_clause_of_a_sample_has_a_picture_that_measures_what_was_reported(string name)
    {
        foreach (var regulation in RegulationCatalogue.All)
        {
            if (Stair.SetOut(Samples.Job(name) with { Regulation = regulation.Id }).Value is { } stair) Check(stair);
        }
    }

    [Fact]
    public void Of_generated_jobs_too() => Generated.Jobs.Holds(job =>
    {
        foreach (var regulation in RegulationCatalogue.All)
        {
            if (Stair.SetOut(job with { Regulation = regulation.Id }).Value is { } stair) Check(stair);
        }
    }, iter: 80, threads: 1);

    [Fact]
    public void Of_flights_of_two_risers_and_of_turns_alone_too()
    {
        var job = Samples.Job("left-kite-low");
        foreach (var sequence in new LayoutItem[][] { [new Flight(1)], [job.Layout.Turn!], [new Flight(0), job.Layout.Turn!, new Flight(1)], [new Turn(TurnKind.Landing, 1, null, null, "")] })
        {
            var risers = sequence.Sum(i => i.Steps) + 1;
            var small = job with { Layout = job.Layout with { Sequence = [.. sequence] }, Survey = job.Survey with { FloorToFloor = [200.0 * risers] } };
            foreach (var regulation in RegulationCatalogue.All)
            {
                if (Stair.SetOut(small with { Regulation = regulation.Id }).Value is { } stair) Check(stair);
            }
        }
    }

    [Fact]
    public void Clauses_that_were_not_measured_have_no_picture()
    {
        var stair = Set.Sample("straight-flight");
        var unmeasured = stair.Regulation.Checks.Where(c => c.Measured is null).ToList();
        Assert.NotEmpty(unmeasured);
        Assert.All(unmeasured, c => Assert.Null(ClausePictures.Of(stair, c)));
    }

    [Fact]
    public void A_width_is_drawn_between_the_faces_of_two_strings()
    {
        var stair = Set.Sample("left-kite-low");
        var check = stair.Regulation.Checks[0] with { Clause = RegulationCatalogue.All.SelectMany(r => r.Clauses).First(c => c.Rule is ClearWidthRule), Measured = stair.Plan.ClearWidth, Where = "stair" };
        var sketch = ClausePictures.Draw(stair, check)!;
        var line = Measured(sketch).Single();
        foreach (var (end, boundary) in new[] { (line.Path.Vertices[0].At, stair.Plan.Inner), (line.Path.Vertices[1].At, stair.Plan.Outer) })
        {
            var p = sketch.Place.Back(end);
            Assert.Contains(boundary.Edges, e => e.Kind == Stairs.Plans.BoundaryKind.StringFace && Path2.Polyline(e.From, e.To).DistanceTo(p) < 1e-6);
        }
    }

    [Fact]
    public void The_outer_measuring_line_of_a_wide_stair_ends_on_its_first_and_last_risers_on_either_hand()
    {
        foreach (var hand in new[] { Hand.Left, Hand.Right })
        {
            var job = Samples.Job("left-kite-low");
            job = job with { Width = 1200, Layout = job.Layout with { Hand = hand }, Sides = hand == Hand.Left ? job.Sides : new(job.Sides.Right, job.Sides.Left) };
            var plan = Set.Out(job).Plan;
            var line = new SecondLine(plan, plan.Turns[0]);
            var (first, last) = (plan.Riser(plan.Turn!.FirstLine), plan.Riser(plan.Turn.LastLine));
            Assert.True(line.Path.Vertices[0].At.DistanceTo(line.On(first)) < 1e-6);
            Assert.True(line.Path.Vertices[^1].At.DistanceTo(line.On(last)) < 1e-6);
            // 270 from the outer face, as the regulation says.
            Assert.Equal(270, line.On(first).DistanceTo(first.Outer), 6);
        }
    }

    private static void Check(Stair stair)
    {
        foreach (var check in stair.Regulation.Checks.Where(c => c.Measured is not null))
        {
            var what = $"{stair.Regulation.Id} {check.Clause.Rule.Id} {check.Where} {JobFile.Write(stair.Job)}";
            var sketch = ClausePictures.Draw(stair, check);
            Assert.True(sketch is not null, what);
            var faults = SheetCheck.Overlaps(new Sheet { Name = "picture", Title = "picture", Paper = new PaperSize("picture", 72, 50), Marks = sketch.Picture.Marks });
            Assert.True(faults.Count == 0, $"{string.Join("; ", faults.Select(f => f.Message))} in {what}");
            Assert.True(Math.Abs(Drawn(sketch, check) - check.Measured!.Value) < 0.01, $"{Drawn(sketch, check)} for {check.Measured} in {what}");
            // The value itself stands in the picture, or the lengths it is made of.
            var words = Flat(sketch).OfType<TextMark>().Select(t => t.Text).ToList();
            if (check.Clause.Rule is not (UniformRiseRule or FirstRiseRule or UniformGoingRule or UniformTaperedGoingRule or TwoRiseAndGoingRule))
                Assert.Contains(words, w => w.StartsWith(check.Unit == "mm" ? stair.Units.Print(check.Measured.Value, 2) : Number.Print(check.Measured.Value, 2), StringComparison.Ordinal));
        }
    }

    /// <summary>What the ink says, by the picture's scale.</summary>
    private static double Drawn(Sketch sketch, ClauseCheck check)
    {
        var lines = Measured(sketch).ToList();
        var lengths = lines.Select(l => l.Path.Length * sketch.Place.Scale.Ratio).ToList();
        return check.Clause.Rule switch
        {
            { Unit: RuleUnit.Count } => Flat(sketch).Count(m => m.Of == Sketch.Counted),
            { Unit: RuleUnit.Degrees } => lines.Single().Path.Edge(0) is var (from, to, bulge) ? Arc2.FromBulge(from, to, bulge).Sweep * (180 / Math.PI) : 0,
            UniformRiseRule or FirstRiseRule or UniformGoingRule or UniformTaperedGoingRule => lengths.Max() - lengths.Min(),
            _ => lengths.Sum(),
        };
    }

    private static IEnumerable<StrokeMark> Measured(Sketch sketch) => Flat(sketch).OfType<StrokeMark>().Where(m => m.Of == Sketch.Measured);

    private static IEnumerable<Mark> Flat(Sketch sketch) => FlatMarks.Of(sketch.Picture.Marks).Select(m => m.Mark);
}
