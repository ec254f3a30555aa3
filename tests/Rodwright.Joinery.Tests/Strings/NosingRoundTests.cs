using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Jobs;
using Xunit;

namespace Rodwright.Joinery.Tests.Strings;

public class NosingRoundTests
{
    [Theory]
    [InlineData(1.0)]
    [InlineData(0.9)]
    [InlineData(0.7)]
    [InlineData(0.45)]
    [InlineData(0.3)]
    public void A_slanted_nosing_follows_its_ellipse_within_five_thousandths(double sine)
    {
        var practice = new Practice();
        var shape = HousingShapes.Tread(100, 500, new(100, sine), 200, null, new(double.NegativeInfinity, double.PositiveInfinity), practice).Seat;
        var a = practice.Tread / 2 / sine;
        for (var i = 0; i <= 200; i++)
        {
            var t = Math.PI * i / 200;
            var onEllipse = new Point2(100 + a * (1 - Angle.Sin(t)), 189 + 11 * Angle.Cos(t));
            Assert.True(shape.DistanceTo(onEllipse) < 0.005, $"{shape.DistanceTo(onEllipse)} at {i}");
        }
    }

    [Fact]
    public void A_face_that_ends_within_the_round_cuts_it_off_upright()
    {
        var shape = HousingShapes.Tread(100, 106, new(100, 1), 200, null, new(double.NegativeInfinity, double.PositiveInfinity), new Practice()).Seat;
        Assert.Equal(100, shape.Bounds.MinX, 0.005);
        Assert.Equal(106, shape.Bounds.MaxX, 1e-6);
        // At 6 behind the nosing the round of radius 11 is 2 sqrt(11^2 - 5^2) high.
        Assert.Equal(2 * Math.Sqrt(121 - 25), shape.Bounds.Height, 0.01);
    }
}
