using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Surveys;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Surveys;

public sealed class HeadroomRemedyTests
{
    private static Job Short => Samples.Job("straight-flight") is var job
        ? job with { Survey = job.Survey with { Well = new() { Length = Readings.Of(2100), Width = Readings.Of(1100), Trimmer = Readings.Of(250) } } } : null!;

    [Fact]
    public void A_well_too_short_is_told_by_how_much_and_made_longer_at_one_press()
    {
        var outcome = Stair.SetOut(Short);
        var finding = Assert.Single(outcome.Findings, f => f.Code == "RW3030");
        Assert.Equal(Severity.Breach, finding.Severity);
        Assert.Contains("towards the foot", finding.Hint, StringComparison.Ordinal);
        var remedy = Assert.Single(RemedyTrial.For(Short, finding));
        Assert.Contains("longer", remedy.Words, StringComparison.Ordinal);
        var freed = Stair.SetOut(JobChanges.Apply(Short, remedy.Changes).Value!);
        Assert.DoesNotContain(freed.Findings, f => f.Code == "RW3030");
        // To the millimetre: one less would not do.
        var length = JobChanges.Apply(Short, remedy.Changes).Value!.Survey.Well!.Length.Mean;
        Assert.Contains(Stair.SetOut(Short with { Survey = Short.Survey with { Well = Short.Survey.Well! with { Length = Readings.Of(length - 1) } } }).Findings, f => f.Code == "RW3030");
    }

    [Fact]
    public void A_well_is_put_into_a_job_that_has_none_field_by_field()
    {
        var job = Samples.Job("straight-flight");
        var changed = JobChanges.Apply(job, [FieldChange.To("survey.well.length", 2600), FieldChange.To("survey.well.width", 1100), FieldChange.To("survey.well.trimmer", 250)]);
        Assert.Equal(new Well { Length = Readings.Of(2600), Width = Readings.Of(1100), Trimmer = Readings.Of(250) }, changed.Value!.Survey.Well);
        Assert.Equal(job, JobChanges.Apply(job, [FieldChange.ToDefault("survey.well.length")]).Value);
        Assert.Null(JobChanges.Apply(job, [FieldChange.To("survey.cellar.length", 2600)]).Value);
        Assert.Contains(JobChanges.Apply(job, [FieldChange.To("survey.well.length", 2600)]).Findings, f => f is { Code: JobCodes.Missing, Where: "survey.well.trimmer" });
    }
}
