using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Xunit;

namespace Rodwright.Stairs.Tests.Jobs;

public sealed class BadInputTests
{
    public static TheoryData<string> Whats => [.. BadInputs.All.Select(b => b.What)];

    [Fact]
    public void The_job_that_is_spoilt_here_is_in_order() => Assert.Empty(JobFile.Read(GoodJob.Text).Findings);

    [Fact]
    public void The_survey_that_is_spoilt_here_is_in_order() => Assert.Empty(JobFile.Read(GoodSurvey.Text).Findings);

    [Fact]
    public void At_least_forty_kinds_of_bad_survey_are_told_apart()
    {
        Assert.True(BadSurveys.Fields.Count + BadSurveys.Contradictions.Count >= 60);
        Assert.True(BadSurveys.Fields.Concat(BadSurveys.Contradictions).Select(b => (b.Code, b.Where.Replace("[0]", "", StringComparison.Ordinal))).Distinct().Count() >= 40);
    }

    [Fact]
    public void Everything_wrong_with_a_survey_is_reported_at_once()
    {
        var text = GoodSurvey.With("\"across\": 1001", "\"across\": 1500").Replace("\"at\": 100", "\"at\": 3300").Replace(", \"width\": 1900", "")
            .Replace("\"second\": { \"along\": 2000", "\"second\": { \"along\": 3600").Replace("\"widthOut\": 850, ", "").Replace("\"wall\": 1", "\"wall\": 9");
        Assert.Equal(["RW1112", "RW1117", "RW1121", "RW1125", "RW1127", "RW1129"], JobFile.Read(text).Findings.Select(f => f.Code).Order());
    }

    [Theory]
    [MemberData(nameof(Whats))]
    public void One_wrong_thing_gets_one_finding(string what)
    {
        var bad = BadInputs.All.Single(b => b.What == what);
        var outcome = JobFile.Read(bad.Text);
        Assert.Null(outcome.Value);
        var finding = Assert.Single(outcome.Findings, f => f.Severity == Severity.Error);
        Assert.Equal((bad.Code, bad.Where), (finding.Code, finding.Where));
        Assert.False(string.IsNullOrWhiteSpace(finding.Message));
        Assert.False(string.IsNullOrWhiteSpace(finding.Hint));
    }

    [Fact]
    public void At_least_forty_kinds_of_error_are_told_apart() =>
        Assert.True(BadInputs.All.Select(b => b.Code).Distinct().Count() >= 40);

    [Fact]
    public void Every_code_of_the_reader_is_in_the_corpus()
    {
        // A note, and two that never come alone; each has its own test below.
        string[] elsewhere = [JobCodes.Readings, JobCodes.RiserThickness, JobCodes.TreadThickness];
        var codes = typeof(JobCodes).GetFields().Select(f => (string)f.GetRawConstantValue()!).Except(elsewhere);
        Assert.Empty(codes.Except(BadInputs.All.Select(b => b.Code)));
    }

    [Fact]
    public void Everything_wrong_is_reported_at_once()
    {
        var text = GoodJob.Text.Replace("\"title\": \"Heron Mill, back stair\"", "\"title\": \"\"").Replace("[2600]", "[2600, 2700]")
            .Replace("\"steps\": 3", "\"steps\": 9").Replace("\"going\": 225", "\"going\": \"NaN\"").Replace("\"housing\": 12", "\"housing\": 40")
            .Replace("\"draw\": 2", "\"draw\": 6").Replace("\"timber\"", "\"wood\"");
        Assert.Equal(
        [
            ("RW1007", "practice.wood"), ("RW1016", "going"), ("RW1023", "title"), ("RW1032", "layout.sequence[1].steps"),
            ("RW1043", "survey.floorToFloor"), ("RW1058", "practice.housing"), ("RW1066", "practice.tenon.draw"),
        ], JobFile.Read(text).Findings.Select(f => (f.Code, f.Where)).Order());
    }

    [Fact]
    public void Where_the_text_stops_being_JSON_is_told_by_line_and_column()
    {
        var finding = Assert.Single(JobFile.Read("{\n  \"title\": \"x\",\n  going: 3\n}").Findings);
        Assert.Contains("line 3, column 3", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_field_is_told_the_nearest_known_one() =>
        Assert.Contains("tread", Assert.Single(JobFile.Read(GoodJob.With("\"tread\": 22", "\"treads\": 22")).Findings).Hint, StringComparison.Ordinal);

    [Fact]
    public void A_field_in_the_wrong_group_is_told_where_it_belongs() =>
        Assert.Contains("practice", Assert.Single(JobFile.Read(GoodJob.With("\"width\": 860", "\"width\": 860, \"newel\": 90")).Findings).Hint, StringComparison.Ordinal);

    [Fact]
    public void A_riser_as_thick_as_the_going_is_refused_and_so_is_the_wedge_behind_it()
    {
        var text = GoodJob.With("\"riser\": 12", "\"riser\": 50").Replace("\"going\": 225", "\"going\": 50");
        Assert.Equal([("RW1054", "practice.riser"), ("RW1056", "practice.treadWedge.length")], JobFile.Read(text).Findings.Select(f => (f.Code, f.Where)));
    }

    [Fact]
    public void A_tread_thicker_than_the_rise_is_refused()
    {
        var text = GoodJob.With("\"tread\": 22", "\"tread\": 70").Replace("[2600]", "[390]").Replace("\"modelScale\": 1", "\"modelScale\": 0.3")
            .Replace("\"riserWedge\": { \"length\": 100, \"thin\": 4, \"taper\": 14, \"runOn\": 25 }", "\"riserWedge\": { \"length\": 20, \"runOn\": 0 }");
        Assert.Contains(JobFile.Read(text).Findings, f => f.Code == JobCodes.TreadThickness && f.Where == "practice.tread");
    }

    [Fact]
    public void Several_readings_are_noted_with_mean_and_spread()
    {
        var outcome = JobFile.Read(GoodJob.With("[2600]", "[2600, 2603, 2604]"));
        Assert.Equal(7807.0 / 3, outcome.Value!.Survey.Height, 9);
        var note = Assert.Single(outcome.Findings);
        Assert.Equal((JobCodes.Readings, Severity.Note), (note.Code, note.Severity));
        Assert.Contains("2602.33 mm", note.Message, StringComparison.Ordinal);
        Assert.Contains("4 mm apart", note.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2605", true)]
    [InlineData("2605.01", false)]
    public void Readings_may_lie_apart_by_the_tolerance_and_no_more(string second, bool reads) =>
        Assert.Equal(reads, JobFile.Read(GoodJob.With("[2600]", $"[2600, {second}]")).Value is not null);

    [Theory]
    [InlineData(35, true)]
    [InlineData(35.1, false)]
    [InlineData(66.9, false)]
    [InlineData(67, true)]
    public void A_riser_of_the_turn_lies_on_the_newel_or_past_it(double e, bool reads)
    {
        var text = GoodJob.With("\"firstRiser\": 30", "\"firstRiser\": " + Rodwright.Geometry.Number.Exact(e));
        Assert.Equal(reads, JobFile.Read(text).Value is not null);
    }
}
