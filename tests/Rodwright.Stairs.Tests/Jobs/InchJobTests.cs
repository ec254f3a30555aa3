using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Jobs.Fields;
using Xunit;

namespace Rodwright.Stairs.Tests.Jobs;

public sealed class InchJobTests
{
    private const string Text = """
        { "rodwright": 1, "title": "Quincy Mill", "units": "inches", "regulation": "usa-irc-2021",
          "survey": { "floorToFloor": ["8' 11 1/4\"", 107.1875], "tolerance": "3/16" },
          "layout": { "hand": "left", "sequence": [ { "flight": 3 }, { "turn": "winders", "steps": 3, "firstRiser": "11", "lastRiser": 11 }, { "flight": 7 } ] },
          "going": 10.25, "width": "3' 6", "modelScale": 1,
          "practice": { "newel": "4-1/2", "nosing": "1 1/8", "tenon": { "part": 0.6 }, "treadWedge": { "taper": 12 } } }
        """;

    private static Job Job => JobFile.Read(Text).Value!;

    [Fact]
    public void Every_length_is_read_in_inches_and_nothing_else_is()
    {
        var job = Job;
        Assert.Same(Units.Inches, job.Units);
        Assert.Equal([2724.15, 2722.5625], job.Survey.FloorToFloor);
        Assert.Equal((260.35, 1066.8, 114.3, 28.575), (job.Going, job.Width, job.Practice.Newel, job.Practice.Nosing));
        Assert.Equal((279.4, 279.4), (job.Layout.Turn!.FirstRiser, job.Layout.Turn.LastRiser));
        Assert.Equal((1, 0.6, 12), (job.ModelScale, job.Practice.Tenon.Part, job.Practice.TreadWedge.Taper));
        Assert.Equal(14, job.Layout.Risers);
    }

    [Fact]
    public void The_unit_may_stand_anywhere_in_the_file() =>
        Assert.Equal(Job, JobFile.Read(Text.Replace("\"units\": \"inches\", ", "").Replace("\"modelScale\": 1", "\"modelScale\": 1, \"units\": \"inches\"")).Value);

    [Fact]
    public void A_job_that_says_no_unit_or_mm_is_in_millimetres_and_is_written_as_it_always_was()
    {
        var said = JobFile.Read(GoodJob.Text.Replace("\"title\"", "\"units\": \"mm\", \"title\"")).Value!;
        Assert.Equal(JobFile.Read(GoodJob.Text).Value, said);
        Assert.DoesNotContain("units", JobFile.Write(said), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_written_stays_in_inches_and_reads_back_as_the_same_job()
    {
        var written = JobFile.Write(Job);
        Assert.Contains("\"units\": \"inches\"", written, StringComparison.Ordinal);
        Assert.Contains("\"8' 11 1/4\"", written, StringComparison.Ordinal);
        Assert.Contains("\"going\": \"10 1/4\"", written, StringComparison.Ordinal);
        Assert.Equal(Job, JobFile.Read(written).Value);
        Assert.Equal(written, JobFile.Write(JobFile.Read(written).Value!));
    }

    [Fact]
    public void A_job_of_odd_millimetres_told_in_inches_loses_nothing()
    {
        var odd = JobFile.Read(GoodJob.Text.Replace("[2600]", "[2600.1, 2598.7]").Replace("\"going\": 225", "\"going\": 225.37")).Value! with { Units = Units.Inches };
        Assert.Equal(odd, JobFile.Read(JobFile.Write(odd)).Value);
        var survey = JobFile.Read(GoodSurvey.Text).Value! with { Units = Units.Inches };
        Assert.Equal(survey, JobFile.Read(JobFile.Write(survey)).Value);
    }

    [Fact]
    public void Lengths_left_out_are_stock_of_inches_on_whole_sixteenths()
    {
        var practice = JobFile.Read(Text.Replace("\"newel\": \"4-1/2\", ", "")).Value!.Practice;
        Assert.Equal((88.9, 31.75, 285.75, 25.4, 19.05), (practice.Newel, practice.WallString.Thickness, practice.WallString.Width, practice.Tread, practice.Riser));
        foreach (var field in JobFields.DescriptionsIn(Units.Inches).Where(f => f.IsLength && f.Default is not null))
            Assert.DoesNotContain(".", field.DefaultIn(Units.Inches)!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bottom_step_the_survey_and_wishes_take_fractions_of_an_inch_too()
    {
        var job = JobFile.Read(Text.Replace("\"tolerance\": \"3/16\"", "\"lowerFinish\": 0").Replace("\"modelScale\": 1", "\"bottomStep\": { \"shape\": \"bull-nose\", \"wedges\": \"5/8\" }, \"wishes\": { \"hand\": \"left\" }")).Value!;
        Assert.Equal((1.5875, 15.875, 63.5, 63.5), (job.BottomStep.Veneer, job.BottomStep.Wedges, job.BottomStep.Lap, job.BottomStep.Layer));
        Assert.Equal((4.7625, 1.5875, 3.175), (job.Survey.Tolerance, job.Survey.Accuracy.FloorToFloor, job.Survey.Accuracy.Walls));
        Assert.Equal(24.75 * 25.4, job.Wishes!.Comfort, 9);
        Assert.Contains("\"comfort\": \"24 3/4\"", JobFile.Write(job), StringComparison.Ordinal);
        Assert.DoesNotContain(".", JobFile.Write(job).Replace("\"part\": 0.6", "", StringComparison.Ordinal).Split("\"weights\"")[0].Replace("\"corner\": 0.3", "", StringComparison.Ordinal).Replace("\"pitch\": 0.5", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void All_bad_spellings_are_found_at_once_in_words_of_inches()
    {
        var findings = JobFile.Read(Text.Replace("\"8' 11 1/4\\\"\"", "\"8' 13\"").Replace("10.25", "\"10 mm\"").Replace("\"3' 6\"", "\"99' 1\"").Replace("\"1 1/8\"", "\"-1 1/8\"").Replace("\"4-1/2\"", "0")).Findings;
        Assert.Equal(
            [("RW1150", "survey.floorToFloor[0]"), ("RW1150", "going"), ("RW1020", "width"), ("RW1018", "practice.newel"), ("RW1017", "practice.nosing")],
            findings.Where(f => f.Severity == Severity.Error).OrderBy(f => Array.IndexOf(["survey.floorToFloor[0]", "going", "width", "practice.newel"], f.Where) is var i && i < 0 ? 9 : i).Select(f => (f.Code, f.Where)));
        Assert.All(findings, f => Assert.DoesNotContain(" mm ", f.Message.Replace("\"10 mm\"", "", StringComparison.Ordinal) + " " + f.Hint + " ", StringComparison.Ordinal));
        var going = findings.First(f => f.Where == "going");
        Assert.Equal("the text \"10 mm\" was read, which is no length in feet and inches; 13/16\" light to 23 5/8\" light is allowed", going.Message);
        Assert.Equal("write it like 9' 1 3/4, 10-1/4 or 10.25", going.Hint);
    }

    [Fact]
    public void In_a_job_in_millimetres_text_of_inches_is_refused_with_its_length()
    {
        var finding = Assert.Single(JobFile.Read(GoodJob.Text.Replace("\"width\": 860", "\"width\": \"2' 10\"")).Findings);
        Assert.Equal(("RW1150", "width"), (finding.Code, finding.Where));
        Assert.Equal("the text \"2' 10\" was read; a number of millimetres, 60 to 3000 mm, is wanted", finding.Message);
        Assert.Equal("write 863.6 without quotation marks, or \"units\": \"inches\" for the whole job", finding.Hint);
    }

    [Fact]
    public void No_contradiction_of_a_job_in_inches_is_told_in_millimetres()
    {
        var told = 0;
        var job = JobFile.Read(GoodJob.Text).Value! with { Units = Units.Inches };
        foreach (var field in JobFields.Descriptions.Where(f => f.IsLength && !f.Path.Contains('[', StringComparison.Ordinal)))
        {
            foreach (var extreme in new[] { field.Least!.Value, field.Most!.Value, field.Most.Value + 1 })
            {
                foreach (var finding in JobChanges.Apply(job, [FieldChange.To(field.Path, extreme)]).Findings)
                {
                    Assert.DoesNotContain(" mm", $"{finding.Message} {finding.Hint} {string.Join(' ', finding.Remedies.Select(r => r.Words))}", StringComparison.Ordinal);
                    told++;
                }
            }
        }
        Assert.True(told > 80, $"{told}");
    }

    [Fact]
    public void A_unit_nobody_knows_is_refused_alone()
    {
        var finding = Assert.Single(JobFile.Read(GoodJob.Text.Replace("\"title\"", "\"units\": \"inch\", \"title\"")).Findings);
        Assert.Equal(("RW1151", "units"), (finding.Code, finding.Where));
        Assert.Contains("mm or inches", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_of_the_unit_changes_no_length()
    {
        var metric = JobFile.Read(GoodJob.Text).Value!;
        var told = JobChanges.Apply(metric, [FieldChange.To("units", "inches")]).Value!;
        Assert.Equal(metric with { Units = Units.Inches }, told);
        Assert.Equal(metric, JobChanges.Apply(told, [FieldChange.To("units", "mm")]).Value);
    }

    [Fact]
    public void The_program_changes_lengths_in_millimetres_whatever_the_unit()
    {
        Assert.Equal(300, JobChanges.Apply(Job, [FieldChange.To("going", 300)]).Value!.Going);
        Assert.Equal(304.8, JobChanges.Apply(Job, [FieldChange.To("going", "12")]).Value!.Going);
    }

    [Fact]
    public void A_brief_in_inches_gives_jobs_in_inches()
    {
        var brief = BriefFile.Read("""{ "rodwright": 1, "title": "x", "units": "inches", "regulation": "usa-irc-2021", "survey": { "floorToFloor": "8' 11" } }""").Value!;
        Assert.Same(Units.Inches, brief.Units);
        Assert.Equal(2717.8, brief.Survey.Height);
        Assert.Same(Units.Inches, brief.With(Job.Layout, 254, 1000, 90).Units);
    }

    [Fact]
    public void The_schema_takes_both_units_and_neither_in_the_others_range()
    {
        var schema = JsonNode.Parse(JobSchema.Text())!;
        Assert.Equal("number", schema["$defs"]!["millimetres"]!["properties"]!["going"]!["type"]!.GetValue<string>());
        var inches = schema["$defs"]!["inches"]!["properties"]!["going"]!;
        Assert.Equal((0.787, 23.623), (inches["anyOf"]![0]!["minimum"]!.GetValue<double>(), inches["anyOf"]![0]!["maximum"]!.GetValue<double>()));
        Assert.Equal("string", inches["anyOf"]![1]!["type"]!.GetValue<string>());
        Assert.Equal("3 1/2", schema["$defs"]!["inches"]!["properties"]!["practice"]!["properties"]!["newel"]!["default"]!.GetValue<string>());
    }
}
