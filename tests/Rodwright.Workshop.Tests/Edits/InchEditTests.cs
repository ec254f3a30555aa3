using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Testing;
using Rodwright.Workshop.Edits;
using Rodwright.Workshop.Starts;
using Xunit;

namespace Rodwright.Workshop.Tests.Edits;

public sealed class InchEditTests
{
    private static Job Job => Samples.Job("feet-and-inches");

    [Theory]
    [InlineData("10 1/2", 266.7)]
    [InlineData("10.5", 266.7)]
    [InlineData("10-1/2\"", 266.7)]
    [InlineData("11", 279.4)]
    public void A_length_is_typed_in_inches(string typed, double millimetres)
    {
        var edit = JobEdits.Set(Job, "going", typed);
        Assert.Equal(millimetres, JobEdits.Apply(Job, edit).Value!.Going);
        Assert.StartsWith("going of the straight steps 10 1/4 to", edit.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_readings_are_typed_with_commas_between()
    {
        var job = JobEdits.Apply(Job, JobEdits.Set(Job, "survey.floorToFloor", "8' 11, 8' 11 1/8, 107")).Value!;
        Assert.Equal([2717.8, 2720.975, 2717.8], job.Survey.FloorToFloor);
        Assert.Equal("8' 11, 8' 11 1/8, 8' 11", JobEdits.Value(job, "survey.floorToFloor"));
    }

    [Fact]
    public void What_is_no_length_is_refused_in_the_readers_words()
    {
        var finding = Assert.Single(JobEdits.Apply(Job, JobEdits.Set(Job, "going", "10 mm")).Findings, f => f.Severity == Rodwright.Stairs.Findings.Severity.Error);
        Assert.Equal(("RW1150", "going"), (finding.Code, finding.Where));
    }

    [Fact]
    public void What_a_field_shows_can_be_typed_back_and_changes_nothing()
    {
        foreach (var field in JobFields.Descriptions.Where(f => f.IsLength && !f.Path.Contains('[', StringComparison.Ordinal)))
        {
            if (JobEdits.Value(Job, field.Path) is not { Length: > 0 } shown) continue;
            Assert.Equal(Job, JobEdits.Apply(Job, JobEdits.Set(Job, field.Path, shown)).Value);
        }
    }

    [Fact]
    public void Differences_are_told_in_inches_and_a_change_of_the_unit_is_one()
    {
        Assert.Equal("going of the straight steps 10 1/4\" to 11\"; side of the square newel 4 1/2\" to 5\"", JobEdits.Words(Job, Job with { Going = 279.4, Practice = Job.Practice with { Newel = 127 } }));
        Assert.Equal(["units"], JobEdits.Differences(Job with { Units = Units.Millimetres }, Job).Select(d => d.Path));
        Assert.Equal(Job with { Units = Units.Millimetres }, JobEdits.Apply(Job, JobEdits.Set(Job, "units", "mm")).Value);
    }

    [Fact]
    public void Two_changes_of_one_job_are_carried_together_whatever_the_unit()
    {
        var mine = Job with { Going = 279.4 };
        var theirs = Job with { Units = Units.Millimetres, Width = 1100 };
        Assert.Equal(theirs with { Going = 279.4 }, JobMerge.Carry(Job, mine, theirs).Value);
    }

    [Fact]
    public void A_drag_goes_by_whole_sixteenths()
    {
        var stair = Stair.SetOut(Job).Value!;
        foreach (var handle in DragEdits.Handles(stair))
        {
            if (DragEdits.Edit(stair, handle.Id, -handle.Step) is not { } edit || JobEdits.Apply(Job, edit).Value is not { } moved) continue;
            Assert.DoesNotContain("heavy", Units.Inches.Print(moved.Going, 2), StringComparison.Ordinal);
            Assert.DoesNotContain("light", Units.Inches.Print(moved.Going, 2), StringComparison.Ordinal);
        }
        Assert.Contains(DragEdits.Handles(stair), h => h.Step == Units.Inch / 16);
    }

    [Fact]
    public void A_new_job_may_be_begun_in_feet_and_inches()
    {
        var job = BlankJobs.Make(new("Barn", "8' 9", "40", "usa-irc-2021", BlankKind.Straight, Hand.Left) { Units = Units.Inches }).Value!;
        Assert.Same(Units.Inches, job.Units);
        Assert.Equal((105 * 25.4, 1016, 88.9), (job.Survey.Height, job.Width, job.Practice.Newel));
        Assert.Contains("\"", JobSummary.Of(job), StringComparison.Ordinal);
    }

    [Fact]
    public void Changes_the_program_makes_are_millimetres_and_the_job_stays_in_inches() =>
        Assert.Equal(Job with { Going = 300 }, JobChanges.Apply(Job, [FieldChange.To("going", 300)]).Value);
}
