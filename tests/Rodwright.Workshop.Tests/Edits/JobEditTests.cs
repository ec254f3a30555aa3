using CsCheck;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Testing;
using Rodwright.Workshop.Edits;
using Xunit;

namespace Rodwright.Workshop.Tests.Edits;

public class JobEditTests
{
    private static Job Barn => Samples.Job("left-kite-low");

    [Fact]
    public void A_number_typed_into_a_field_is_what_the_job_has_afterwards()
    {
        Assert.Equal(230.5, JobEdits.Apply(Barn, JobEdits.Set(Barn, "going", " 230.5 mm ")).Value!.Going);
        Assert.Equal(120, JobEdits.Apply(Barn, JobEdits.Set(Barn, "practice.treadWedge.length", "120")).Value!.Practice.TreadWedge.Length);
        Assert.Equal([2598, 2602.5], JobEdits.Apply(Barn, JobEdits.Set(Barn, "survey.floorToFloor", "2598, 2602.5")).Value!.Survey.FloorToFloor);
        Assert.True(JobEdits.Apply(Barn, JobEdits.Set(Barn, "practice.riserOnTread", "true")).Value!.Practice.RiserOnTread);
        Assert.Equal("Larkmoor \"old\" barn", JobEdits.Apply(Barn, JobEdits.Set(Barn, "title", "Larkmoor \"old\" barn")).Value!.Title);
    }

    [Fact]
    public void An_empty_field_goes_back_to_its_default()
    {
        var changed = JobEdits.Apply(Barn, JobEdits.Set(Barn, "practice.newel", "120")).Value!;
        Assert.Equal(120, changed.Practice.Newel);
        Assert.Equal(90, JobEdits.Apply(changed, JobEdits.Set(changed, "practice.newel", "")).Value!.Practice.Newel);
        var thin = JobEdits.Apply(Barn, JobEdits.Set(Barn, "practice.tenon.thickness", "18")).Value!;
        Assert.Equal(18, thin.Practice.Tenon.Thickness);
        Assert.Equal(Barn, JobEdits.Apply(thin, JobEdits.Set(thin, "practice.tenon.thickness", "")).Value!);
    }

    [Theory]
    [InlineData("going", "2000", JobCodes.Above)]
    [InlineData("going", "wide", JobCodes.TextWanted, JobCodes.NumberWanted)]
    [InlineData("going", "", JobCodes.Missing)]
    [InlineData("practice.newel", "-3", JobCodes.Negative)]
    [InlineData("practice.newle", "90", JobCodes.Unknown)]
    [InlineData("going.going", "90", JobCodes.Unknown)]
    [InlineData("layout.sequence[9].flight", "2", JobCodes.Unknown)]
    [InlineData("regulation", "atlantis", JobCodes.Regulation)]
    [InlineData("practice.riserOnTread", "perhaps", JobCodes.FlagWanted)]
    public void A_value_that_cannot_be_is_refused_by_the_reader_and_never_clamped(string path, string typed, params string[] codes)
    {
        var outcome = JobEdits.Apply(Barn, JobEdits.Set(Barn, path, typed));
        Assert.Null(outcome.Value);
        Assert.Contains(outcome.Findings, f => codes.Contains(f.Code));
    }

    [Fact]
    public void A_refused_edit_is_taken_with_the_remedy_it_is_offered()
    {
        var edit = JobEdits.Set(Barn, "going", "180");
        var finding = Assert.Single(JobEdits.Apply(Barn, edit).Findings, f => f.Code == JobCodes.TreadWedge);
        var mended = JobEdits.Apply(Barn, edit.With(Assert.Single(finding.Remedies))).Value!;
        Assert.Equal((180, 143), (mended.Going, mended.Practice.TreadWedge.Length));
    }

    [Fact]
    public void All_that_is_wrong_is_told_at_once()
    {
        var edit = JobEdit.Of("three", FieldChange.To("going", -1), FieldChange.To("width", double.NaN), FieldChange.To("practice.newel", 9999));
        Assert.Empty(new[] { "going", "width", "practice.newel" }.Except(JobEdits.Apply(Barn, edit).Findings.Select(f => f.Where)));
    }

    [Theory]
    [InlineData("{")]
    [InlineData("{ \"flight\": 1, \"flight\": 2 }")]
    [InlineData("[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]")]
    [InlineData("")]
    public void A_change_that_is_no_JSON_is_a_finding(string json) =>
        Assert.Equal(JobCodes.NotJson, Assert.Single(JobEdits.Apply(Barn, JobEdit.Of("", new FieldChange("layout.sequence", json))).Findings).Code);

    [Fact]
    public void One_item_of_a_sequence_can_be_changed_by_its_place()
    {
        var edit = JobEdit.Of("", FieldChange.To("layout.sequence[1].firstRiser", 25));
        var changed = JobEdits.Apply(Barn, edit).Value!;
        Assert.Equal(25, changed.Layout.Turn!.FirstRiser);
        Assert.Equal(Barn, JobEdits.Apply(changed, JobEdit.Of("", FieldChange.ToDefault("layout.sequence[1].firstRiser"))).Value);
    }

    [Fact]
    public void Typing_what_a_field_says_changes_nothing() => Generated.Jobs.Holds(job =>
    {
        var text = JobFile.Write(job);
        foreach (var field in JobFields.Descriptions.Where(f => !f.Path.Contains('[', StringComparison.Ordinal)))
            Assert.Equal(job, JobEdits.Apply(text, JobEdits.Set(job, field.Path, JobEdits.Value(job, field.Path))).Value);
    }, iter: 30);

    [Fact]
    public void Two_jobs_differ_exactly_when_differences_are_told() => Gen.Select(Generated.Jobs, Generated.Jobs).Holds((a, b) =>
    {
        Assert.Empty(JobEdits.Differences(a, a));
        var differences = JobEdits.Differences(a, b);
        Assert.Equal(a == b, differences.IsEmpty);
        Assert.All(differences, d => Assert.NotEqual(d.Before, d.After));
        // Carried over one by one, the differences turn the one job into the other.
        var tree = System.Text.Json.Nodes.JsonNode.Parse(JobFile.Write(b))!;
        var changes = differences.Select(d => new FieldChange(d.Path, d.Path.Split('.').Aggregate(tree, (n, name) => n[name]!).ToJsonString()));
        Assert.Equal(b, JobChanges.Apply(a, changes).Value);
    }, iter: 100);

    [Fact]
    public void Differences_are_told_in_the_words_of_the_bench()
    {
        var after = Barn with { Going = 230, Practice = Barn.Practice with { TreadWedge = Barn.Practice.TreadWedge with { Length = 140 }, Tenon = Barn.Practice.Tenon with { Thickness = 18 } } };
        Assert.Equal(
            "going of the straight steps 225 to 230; tread wedge: length 150 to 140; thickness of the tenon none given to 18",
            JobEdits.Words(Barn, after));
        var moved = JobEdits.Apply(Barn, LayoutEdits.MoveTurn(Barn, 1)!).Value!;
        Assert.Equal("steps 2 steps, 3 tapered, 7 steps to 3 steps, 3 tapered, 6 steps", JobEdits.Words(Barn, moved));
        Assert.Equal("", JobEdits.Words(Barn, Barn));
    }

    [Theory]
    [InlineData("left-kite-low", "13 risers of 200.0, left hand, 3 tapered steps, going 225")]
    [InlineData("quarter-landing", "15 risers of 183.3, left hand, quarter landing, going 235")]
    [InlineData("right-kite-top", "14 risers of 193.8, right hand, 3 tapered steps, going 230")]
    [InlineData("straight-flight", "13 risers of 203.1, left hand, straight flight, going 235")]
    [InlineData("half-scale-teaching", "6 risers of 95.0, left hand, 3 tapered steps, going 120, model at 0.5 of full size")]
    [InlineData("double-kite", "14 risers of 186.5, left hand, half turn of 6 tapered steps, going 230")]
    [InlineData("dog-leg", "14 risers of 191.4, right hand, half landing, going 240")]
    [InlineData("left-then-right", "15 risers of 176.0, left and right hand, 3 tapered steps and 3 tapered steps, going 230")]
    public void A_job_in_one_line(string sample, string line) => Assert.Equal(line, JobSummary.Of(Samples.Job(sample)));

    [Fact]
    public void Every_field_stands_in_exactly_one_group()
    {
        Assert.Equal(
            JobFields.Descriptions.Select(d => d.Path).Order(StringComparer.Ordinal),
            FieldGroups.All.SelectMany(g => g.Fields).Select(f => f.Path).Order(StringComparer.Ordinal));
        Assert.Equal(FieldGroups.All.Length, FieldGroups.All.Select(g => g.Name).Distinct().Count());
    }

    [Fact]
    public void No_two_fields_are_called_alike()
    {
        var labels = JobFields.Descriptions.Where(d => !d.Path.Contains('[', StringComparison.Ordinal)).Select(FieldLabels.Of).ToList();
        Assert.Equal(labels.Count, labels.Distinct().Count());
        Assert.Contains("wall string: thickness", labels);
    }
}
