using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class PointTests
{
    [Fact]
    public void Part_of_the_way_is_measured_from_here() =>
        Gen.Select(Shapes.Chords, Gen.Double[0, 1]).Holds((chord, part) =>
        {
            var p = chord.From.Towards(chord.To, part);
            return Math.Abs(p.DistanceTo(chord.From) - part * chord.From.DistanceTo(chord.To)) < 1e-7;
        });

    [Fact]
    public void Points_a_ten_millionth_apart_are_one()
    {
        Assert.True(new Point2(1, 1).IsSame(new(1 + 9e-8, 1)));
        Assert.False(new Point2(1, 1).IsSame(new(1 + 1.1e-7, 1)));
        Assert.True(Tolerance.IsSame(2600, 2600 + 9e-8));
        Assert.False(Tolerance.IsSame(2600, 2600.0000002));
    }

    [Fact]
    public void Plan_leaves_out_the_height_and_the_mirror_changes_x_alone()
    {
        var p = new Point3(1, 2, 3);
        Assert.Equal(new(1, 2), p.Plan);
        Assert.Equal(new(-1, 2, 3), p.Mirrored);
        Assert.Equal(new(-1, 2), p.Plan.Mirrored);
        Assert.Equal(3, p.DistanceTo(new(3, 3, 5)), 12);
    }
}
