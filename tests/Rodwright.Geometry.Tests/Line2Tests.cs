using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class Line2Tests
{
    [Fact]
    public void A_line_without_a_direction_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new Line2(new(1, 1), new(0, 0)));
        Assert.Throws<ArgumentException>(() => Line2.Between(new(1, 1), new(1, 1)));
        Assert.Throws<ArgumentException>(() => new Line2(new(1, 1), new(double.NaN, 0)));
    }

    [Fact]
    public void Left_is_left_of_the_direction()
    {
        var north = new Line2(new(100, 0), new(0, 5));
        Assert.Equal(100, north.LeftOf(new(0, 0)), 12);
        Assert.Equal(-50, north.LeftOf(new(150, 7)), 12);
        Assert.Equal(7, north.Station(new(150, 7)), 12);
        Assert.True(north.OffsetLeft(30).Through.IsSame(new(70, 0)));
    }

    [Fact]
    public void Parallel_lines_do_not_cross() =>
        Gen.Select(Shapes.Chords, Gen.Double[-500, 500]).Holds((chord, offset) =>
        {
            var line = Line2.Between(chord.From, chord.To);
            return line.Cross(line.OffsetLeft(offset)) is null;
        });

    [Fact]
    public void The_crossing_lies_on_both_lines_whichever_is_asked() =>
        Gen.Select(Shapes.Points, Shapes.Directions, Shapes.Points, Gen.Double[0.05, 3.05]).Holds((a, direction, b, between) =>
        {
            var (one, other) = (new Line2(a, Vector2.At(direction)), new Line2(b, Vector2.At(direction + between)));
            return one.Cross(other) is { } p && other.Cross(one) is { } q
                && p.DistanceTo(q) < 1e-6 && Math.Abs(one.LeftOf(p)) < 1e-6 && Math.Abs(other.LeftOf(p)) < 1e-6;
        });

    [Fact]
    public void Station_and_distance_say_where_a_point_is() =>
        Gen.Select(Shapes.Chords, Shapes.Points).Holds((chord, p) =>
        {
            var line = Line2.Between(chord.From, chord.To);
            return line.OffsetLeft(line.LeftOf(p)).At(line.Station(p)).DistanceTo(p) < 1e-7;
        });
}
