using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Views;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Sheets;

public sealed class RoomSheetTests
{
    private static IEnumerable<string> Words(string sheet) =>
        FlatMarks.Of(StairSheets.Make(Rods.Sample("loft-under-slope")).Single(s => s.Name == sheet).Marks).Select(m => m.Mark).OfType<TextMark>().Select(t => t.Text);

    [Fact]
    public void The_room_sheet_says_what_was_measured()
    {
        var words = Words("room").ToList();
        // The party wall's mean, the eaves wall, the corner by 600, 800 and 1001.5.
        foreach (var expected in new[] { "3743", "2380", "90.18°", "bathroom door", "edge of the well", "roof slope 2000 high", "least headroom 1818 under roof slope" }) Assert.Contains(expected, words);
    }

    [Fact]
    public void The_section_shows_floors_trimmer_and_the_least_headroom_on_the_walking_line()
    {
        var words = string.Join("|", Words("section"));
        foreach (var expected in new[] { "0  floor", "2623  upper floor", "2391  under the trimmer", "1977", "roof slope" }) Assert.Contains(expected, words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_section_measures_what_the_formula_measures_on_a_straight_flight_of_one_height()
    {
        var job = Samples.Job("straight-flight");
        var stair = Joinery.Stair.SetOut(job with { Survey = job.Survey with { Well = new() { Length = Stairs.Surveys.Readings.Of(2300), Width = Stairs.Surveys.Readings.Of(2000), Trimmer = Stairs.Surveys.Readings.Of(250) } } }).Value!;
        var view = new SectionView(stair);
        Assert.Equal(view.Headroom!.Least!.Least, view.Least!.Value.High - view.Least.Value.Low, 1e-3);
    }

    [Fact]
    public void A_job_of_which_only_the_height_was_measured_has_neither_sheet() =>
        Assert.DoesNotContain(StairSheets.Make(Rods.Sample("straight-flight")), s => s.Name is "room" or "section");

    [Fact]
    public void Where_the_headroom_is_least_lies_on_the_sheet_even_off_the_stair()
    {
        // A slope that comes down over the upper floor, past the last riser.
        var job = Samples.Job("straight-flight");
        var slope = new Stairs.Surveys.SlopingCeiling { First = new() { Height = Stairs.Surveys.Readings.Of(2600) }, Second = new() { Along = 1000, Height = Stairs.Surveys.Readings.Of(2300) } };
        var view = new RoomView(Joinery.Stair.SetOut(job with { Survey = job.Survey with { Ceilings = [slope] } }).Value!);
        var (at, last) = (view.Report.Headroom!.Least!.At, view.Stair.Plan.RiserLines[^1]);
        Assert.True((at - last.Inner).Dot(last.Up) > 300);
        Assert.Equal(view.Bounds, view.Bounds.With(at));
    }

    [Fact]
    public void The_line_of_a_slope_lies_where_it_is_as_high_as_it_says()
    {
        var view = new RoomView(Joinery.Stair.SetOut(Samples.Job("loft-under-slope")).Value!);
        var above = view.Report.Headroom!.Above.Single(o => o.Slopes);
        var (a, b) = view.Contour(above, 2000, view.Bounds)!.Value;
        foreach (var p in new[] { a, b, a.Towards(b, 0.4) }) Assert.Equal(view.Stair.Job.Survey.Height + 2000, above.HeightAt(p), 1e-6);
    }
}
