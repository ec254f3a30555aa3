using Rodwright.Stairs.Surveys;
using Rodwright.Testing;
using Rodwright.Workshop.Edits;

namespace Rodwright.Workshop.Tests.Edits;

public sealed class SurveyEditTests
{
    [Fact]
    public void A_room_that_differs_is_told()
    {
        var job = Samples.Job("loft-under-slope");
        var other = job with { Survey = job.Survey with { Walls = job.Survey.Walls.With(1, job.Survey.Walls[1] with { Length = Readings.Of(2500) }) } };
        var difference = Assert.Single(JobEdits.Differences(job, other));
        Assert.Equal(("survey.walls", "walls of the room"), (difference.Path, difference.Label));
        Assert.NotEqual(difference.Before, difference.After);
        Assert.Equal(("2", "none"), (JobEdits.Differences(job, job with { Survey = job.Survey with { Walls = [] } })[0].Before, JobEdits.Differences(job, job with { Survey = job.Survey with { Walls = [] } })[0].After));
    }

    [Fact]
    public void A_room_is_scaled_with_its_stair_and_its_angles_are_not()
    {
        var job = Samples.Job("loft-under-slope");
        var half = JobEdits.Apply(job, ScaleEdit.To(job, 0.5)!).Value!;
        Assert.Equal([1190], half.Survey.Walls[1].Length.Values);
        Assert.Equal(500.75, half.Survey.Walls[0].Corner!.Across.Mean);
        Assert.Equal(902.5, half.Survey.Ceilings[0].First.Height.Mean);
        Assert.Equal("party wall", half.Survey.Walls[0].Name);
        Assert.Equal(job.Survey.Walls[0].Corner!.Degrees(1, 1)!.Value, half.Survey.Walls[0].Corner!.Degrees(1, 1)!.Value, 0.01);
        Assert.Equal(job.Survey.Accuracy.Corner, half.Survey.Accuracy.Corner);
    }
}
