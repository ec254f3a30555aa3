using CsCheck;
using Rodwright.Geometry;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Surveys;
using Rodwright.Stairs.Tests.Headroom;
using Rodwright.Stairs.Tests.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Surveys;

public sealed class RoomTests
{
    [Theory]
    [InlineData(600, 800, 1000, 90)]
    [InlineData(300, 400, 500, 90)]
    [InlineData(1000, 1000, 1000, 60)]
    public void A_corner_is_read_from_two_legs_and_the_distance_across(double a, double b, double across, double degrees) =>
        Assert.Equal(degrees, new CornerReading { Leg = a, NextLeg = b, Across = Readings.Of(across) }.Degrees(1, 1)!.Value, 1e-9);

    [Fact]
    public void A_corner_is_read_from_the_diagonal_over_both_walls() =>
        Assert.Equal(90, new CornerReading { Diagonal = Readings.Of(5000) }.Degrees(3000, 4000)!.Value, 1e-9);

    [Fact]
    public void Two_millimetres_across_600_and_800_are_a_quarter_of_a_degree() =>
        // d(angle) = c dc / (a b sin angle) = 1000 * 2 / 480000 rad.
        Assert.Equal(90 + 180 / Math.PI * 2000 / 480_000, new CornerReading { Leg = 600, NextLeg = 800, Across = Readings.Of(1002) }.Degrees(1, 1)!.Value, 0.001);

    [Fact]
    public void Walls_are_walked_with_the_room_on_the_left()
    {
        var room = RoomShape.TryOf(JobFile.Read(GoodSurvey.Text).Value!.Survey with { Walls = [Wall(4000), Wall(3000), Wall(4000), Wall(3000)] })!;
        Assert.Equal(new Point2(4000, 3000), room.Walls[2].Through);
        Assert.Equal(0, room.Misclosure, 1e-9);
        Assert.All(room.Walls, w => Assert.True(w.LeftOf(new(2000, 1500)) > 0));

        static WallRun Wall(double length) => new() { Length = Readings.Of(length) };
    }

    [Fact]
    public void What_is_still_to_come_below_takes_from_the_height_and_above_adds_to_it()
    {
        var survey = new Survey { FloorToFloor = [2600, 2602], LowerFinish = 15, UpperFinish = 22 };
        Assert.Equal(2601 + 22 - 15, survey.Height);
    }

    [Fact]
    public void A_turning_stair_stands_in_the_corner_with_no_gap_and_in_no_wall() => Rooms.Jobs.Holds(job =>
    {
        if (job.Survey.Walls.Count == 0 || job.Layout.Turn is null || job.TryPlan() is not { } plan) return;
        var (room, frame) = (RoomShape.TryOf(job.Survey)!, RoomFrame.Of(plan));
        Assert.Equal(0, StairBack.Of(plan).SelectMany(b => new[] { b.From, b.To }).Min(p => room.Walls[1].LeftOf(frame.ToRoom(p))), 1e-4);
        Assert.Equal(0, StairBack.Of(plan).SelectMany(b => new[] { b.From, b.To }).Min(p => room.Walls[0].LeftOf(frame.ToRoom(p))), 1e-4);
    }, iter: 200);

    [Fact]
    public void Both_hands_have_one_room() => Rooms.Jobs.Holds(job =>
    {
        if (job.TryPlan() is not { } plan) return;
        var (left, right) = (RoomFrame.Of(plan), RoomFrame.Of(plan.Mirrored()));
        Assert.Equal(left.From ?? 0, right.From ?? 0, 1e-6);
        foreach (var p in new Point2[] { new(0, 0), new(1200, 0), new(700, 900) }) Assert.True(left.ToWorld(p).Mirrored.DistanceTo(right.ToWorld(p)) < 1e-6);
        foreach (var p in new Point2[] { new(0, 0), new(1200, 0), new(700, 900) }) Assert.True(left.ToRoom(left.ToWorld(p)).DistanceTo(p) < 1e-6);
        Assert.Equal(WallFit.Of(plan).Select(f => (f.Wall, Math.Round(f.Least, 6))), WallFit.Of(plan.Mirrored()).Select(f => (f.Wall, Math.Round(f.Least, 6))));
    }, iter: 200);

    [Theory]
    [InlineData(1500, 0, true)]
    [InlineData(900, 0, true)]
    [InlineData(500, 1, false)]
    public void A_door_beside_the_stair_is_clear_until_a_step_stands_before_it(double from, int step, bool clear)
    {
        var job = Bench.Flight(2520, 14, 225);
        WallOpening door = new() { At = 100, Width = 726, Head = 2000 };
        var plan = (job with { Survey = job.Survey with { Walls = [new() { Length = Readings.Of(5000), Openings = [door] }], Place = new() { From = from } } }).Plan();
        var fit = Assert.Single(OpeningFit.Of(plan));
        Assert.Equal((clear, step), (fit.IsClear, fit.Step));
    }

    [Fact]
    public void A_door_under_the_upper_steps_is_walked_through_and_a_window_in_the_way_of_the_string_is_told()
    {
        var job = Bench.Flight(2700, 15, 225);
        WallOpening low = new() { Kind = OpeningKind.Window, Name = "stair window", At = 1000, Width = 600, Sill = 900, Head = 1500 };
        WallOpening high = low with { Sill = 2100, Head = 2500 };
        foreach (var (opening, crossed) in new[] { (low, true), (high, false) })
        {
            var plan = (job with { Survey = job.Survey with { Walls = [new() { Length = Readings.Of(5000), Openings = [opening] }] } }).Plan();
            Assert.Equal(crossed, Assert.Single(OpeningFit.Of(plan)).Crossed);
        }
    }
}
