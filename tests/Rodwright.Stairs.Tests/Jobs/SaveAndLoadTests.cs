using System.Globalization;
using CsCheck;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Jobs;

public sealed class SaveAndLoadTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_sample_reads(string name) =>
        Assert.DoesNotContain(JobFile.Read(Samples.Text(name)).Findings, f => f.Severity == Findings.Severity.Error);

    [Fact]
    public void Save_and_load_is_the_identity_on_generated_jobs() => Generated.All.Holds(job =>
    {
        var outcome = JobFile.Read(JobFile.Write(job));
        Assert.Equal(job, outcome.Value);
        Assert.Empty(outcome.Findings);
    }, iter: 5000);

    [Fact]
    public void A_whole_survey_reads_back_as_it_was_written()
    {
        var job = JobFile.Read(GoodSurvey.Text).Value!;
        Assert.Equal(job, JobFile.Read(JobFile.Write(job)).Value);
        Assert.NotEqual(job, job with { Survey = job.Survey with { Walls = job.Survey.Walls.With(0, job.Survey.Walls[0] with { Name = "other" }) } });
        Assert.Equal(2608, job.Survey.Height);
    }

    [Fact]
    public void Saving_again_gives_the_same_text() => Generated.Jobs.Holds(job =>
    {
        var text = JobFile.Write(job);
        Assert.Equal(text, JobFile.Write(JobFile.Read(text).Value!));
    }, iter: 500);

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_same_text_is_written_and_read_under_any_culture(string culture)
    {
        var job = Samples.Job("half-scale-teaching") with { Going = 120.25 };
        var text = JobFile.Write(job);
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(text, JobFile.Write(job));
            Assert.Equal(job, JobFile.Read(text).Value);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Fields_left_out_take_the_defaults_of_practice() =>
        Assert.Equal(new Practice(), Samples.Job("left-kite-low").Practice);

    [Theory]
    [InlineData("left", SideKind.Open, SideKind.Wall)]
    [InlineData("right", SideKind.Wall, SideKind.Open)]
    public void Sides_left_out_are_open_inside_the_turn(string hand, SideKind left, SideKind right)
    {
        var text = GoodJob.With("\"sides\": { \"left\": \"open\", \"right\": \"wall\" },", "").Replace("\"hand\": \"left\"", $"\"hand\": \"{hand}\"");
        Assert.Equal(new Sides(left, right), JobFile.Read(text).Value!.Sides);
    }

    [Fact]
    public void One_reading_may_stand_without_brackets() =>
        Assert.Equal(JobFile.Read(GoodJob.Text).Value, JobFile.Read(GoodJob.With("[2600]", "2600")).Value);

    [Fact]
    public void A_flight_of_nothing_may_stand_beside_a_turn() =>
        Assert.Equal(0, JobFile.Read(GoodJob.With("{ \"flight\": 2 }", "{ \"flight\": 0 }").Replace("[2600]", "[2200]")).Value!.Layout.GoingsBefore);

    [Fact]
    public void No_text_whatever_makes_the_reader_throw()
    {
        // A good job with a piece cut out and another put in: mostly broken, now and then still a job.
        var pieces = Gen.OneOf("", "{", "}", "[", "]", "\"", ",", ":", "null", "-1", "1e400", "\"\\ud800\"", "\0", "\ud83d", "é", "NaN", "true", "{}", "[[]]", "\"going\":1,");
        Gen.Select(Gen.Int[0, GoodJob.Text.Length - 1], Gen.Int[0, 12], pieces).Holds((at, cut, piece) =>
        {
            var end = Math.Min(GoodJob.Text.Length, at + cut);
            var outcome = JobFile.Read(GoodJob.Text[..at] + piece + GoodJob.Text[end..]);
            Assert.Equal(outcome.Value is null, outcome.Findings.Any(f => f.Severity == Findings.Severity.Error));
        }, iter: 20_000);
    }
}
