using Rodwright.Geometry;
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

    [Fact]
    public void A_field_of_a_thing_is_found_by_its_place_and_by_its_thing()
    {
        Assert.Equal("survey.walls[3].openings[12].at", SurveyEdits.Field("survey.walls[3].openings[12].at")!.Path);
        Assert.Null(SurveyEdits.Field("survey.walls[3].depth"));
        Assert.Contains(SurveyEdits.FieldsOf("survey.walls[3]"), f => f.Path == "survey.walls[3].corner.across");
        Assert.DoesNotContain(SurveyEdits.FieldsOf("survey.walls[3]"), f => f.Path.Contains("openings", StringComparison.Ordinal));
    }

    [Fact]
    public void A_well_given_by_its_corners_is_the_same_well_until_a_corner_is_moved()
    {
        var job = Samples.Job("loft-under-slope");
        Point2[] ring = [new(1286.5, 0), new(3743, 0), new(3743, 2020), new(1286.5, 2020)];
        var given = JobEdits.Apply(job, SurveyEdits.WellByCorners(job.Units, ring)).Value!;
        Assert.False(given.Survey.Well!.IsRectangle);
        Assert.Equal(ring, given.Survey.Well.Corners);
        Assert.Equal(job.Survey.Well!.Trimmer, given.Survey.Well.Trimmer);
        var more = JobEdits.Apply(given, SurveyEdits.AddCorner(given)).Value!;
        Assert.Equal(new(1286.5, 1010), more.Survey.Well!.Corners[^1]);
        var moved = JobEdits.Apply(more, SurveyEdits.SetCorner(more, 4, true, "1100")).Value!;
        Assert.Equal(new(1100, 1010), moved.Survey.Well!.Corners[^1]);
        Assert.Equal(given.Survey.Well.Corners, JobEdits.Apply(moved, SurveyEdits.RemoveCorner(moved, 4)).Value!.Survey.Well!.Corners);
        Assert.Null(JobEdits.Apply(moved, SurveyEdits.SetCorner(moved, 4, true, "9000")).Value);
        Assert.Null(JobEdits.Apply(moved, SurveyEdits.SetCorner(moved, 4, true, "wide")).Value);
    }
}
