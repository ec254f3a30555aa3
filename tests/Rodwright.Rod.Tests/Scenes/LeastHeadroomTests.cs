using System.Text.Json;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Properties;
using Rodwright.Rod.Scenes;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Surveys;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Scenes;

/// <summary>The mark of the least headroom: as long as its measure, under a piece of the right thing.</summary>
public class LeastHeadroomTests
{
    [Fact]
    public void Under_a_slope_the_line_is_as_long_as_the_headroom_and_the_piece_lies_on_the_underside()
    {
        var stair = RodJobs.Stair("loft-under-slope");
        var least = HeadroomReport.Of(stair.Plan)!.Least!;
        var (words, low, high, points) = Read(LeastHeadroom.Of(stair)!);
        Assert.Equal("headroom 1818 mm, step 12, under roof slope", words);
        Assert.Equal(least.Least, high.Z - low.Z, 2e-3);
        Assert.Equal((low.X, low.Y), (high.X, high.Y));
        Assert.NotEmpty(points);
        Assert.All(points, p => Assert.InRange(p.Z - least.Under.HeightAt(new(p.X, p.Y)), -2e-3, 20 + 2e-3));
    }

    [Fact]
    public void Under_the_floor_the_piece_is_as_deep_as_the_trimmer_and_lies_outside_the_well()
    {
        var job = Samples.Job("left-kite-low");
        var stair = Stair.SetOut(job with { Survey = job.Survey with { Well = new() { Length = Readings.Of(2455), Width = Readings.Of(2020), Trimmer = Readings.Of(232) } } }).Value!;
        var least = HeadroomReport.Of(stair.Plan)!.Least!;
        var (words, low, high, points) = Read(LeastHeadroom.Of(stair)!);
        Assert.True(least.Least < 0);
        Assert.Equal($"✗ {Number.Print(-least.Least, 0)} mm in the trimmer, step 11", words);
        Assert.Equal(least.Least, high.Z - low.Z, 2e-3);
        Assert.Equal(stair.Job.Survey.Height, points.Max(p => p.Z), 2e-3);
        Assert.Equal(stair.Job.Survey.Height - 232, points.Min(p => p.Z), 2e-3);
        var well = Path2.Polygon(least.Under.Well!.Value);
        Assert.All(points, p => Assert.True(!well.Holds(new(p.X, p.Y)) || well.DistanceTo(new(p.X, p.Y)) < 0.01, $"{p}"));
    }

    [Fact]
    public void Where_nothing_was_measured_above_the_stair_there_is_no_mark() => Assert.Null(LeastHeadroom.Of(RodJobs.Stair("left-kite-low")));

    [Fact]
    public void In_made_up_rooms_the_line_ends_on_the_stair_and_on_what_is_above() => Rooms.Jobs.Holds(job =>
    {
        if (Stair.SetOut(job).Value is not { } stair || HeadroomReport.Of(stair.Plan)?.Least is not { } least) return;
        var (_, low, high, points) = Read(LeastHeadroom.Of(stair)!);
        Assert.Equal(least.Least, high.Z - low.Z, 3e-3);
        Assert.Equal(least.Under.HeightAt(least.At), high.Z, 2e-3);
        Assert.True(points.Count >= 6, $"{points.Count}");
        Assert.Contains(points, p => new Point2(p.X, p.Y).DistanceTo(least.At) < 650);
    }, iter: 60);

    private static (string Words, Point3 Low, Point3 High, List<Point3> Points) Read(string text)
    {
        using var read = JsonDocument.Parse(text);
        var root = read.RootElement;
        var numbers = Numbers("points");
        var count = numbers.Length / 3;
        Assert.All(root.GetProperty("triangles").EnumerateArray().Concat(root.GetProperty("lines").EnumerateArray()), i => Assert.InRange(i.GetInt32(), 0, count - 1));
        Assert.Equal(0, root.GetProperty("lines").GetArrayLength() % 2);
        return (root.GetProperty("words").GetString()!, Point(Numbers("low"), 0), Point(Numbers("high"), 0), [.. Enumerable.Range(0, count).Select(i => Point(numbers, 3 * i))]);

        double[] Numbers(string name) => [.. root.GetProperty(name).EnumerateArray().Select(n => n.GetDouble())];
        static Point3 Point(double[] at, int i) => new(at[i], at[i + 1], at[i + 2]);
    }
}
