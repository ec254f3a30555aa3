using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class AngleTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void An_angle_is_finite(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Angle.FromRadians(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Angle.FromDegrees(value));
    }

    [Fact]
    public void Pitch_is_rise_over_going()
    {
        // 200 over 225: a 8-9-sqrt(145) triangle.
        var pitch = Angle.OfPitch(200, 225);
        Assert.Equal(8 / Math.Sqrt(145), pitch.Sine, 12);
        Assert.Equal(9 / Math.Sqrt(145), pitch.Cosine, 12);
        Assert.Equal(8.0 / 9, pitch.Tangent, 12);
        Assert.Equal(41.633539, pitch.Degrees, 6);
        Assert.Equal(90, Angle.OfPitch(1, 0).Degrees, 12);
        Assert.Equal(45, Angle.OfPitch(7, 7).Degrees, 12);
    }

    [Fact]
    public void Degrees_and_radians_agree() =>
        Gen.Double[-720, 720].Holds(d => Math.Abs(Angle.FromRadians(Angle.FromDegrees(d).Radians).Degrees - d) < 1e-9);

    [Fact]
    public void Inverses_hold_their_argument_to_what_is_defined()
    {
        Assert.Equal(Math.PI / 2, Angle.Asin(1 + 1e-12), 12);
        Assert.Equal(0, Angle.Acos(1 + 1e-12), 12);
        Assert.Equal(Math.PI, Angle.Acos(-1 - 1e-12), 12);
        Assert.Equal(-Math.PI / 2, Angle.Asin(-2), 12);
    }

    [Fact]
    public void Inverses_undo_what_they_invert() =>
        Gen.Double[-1.5, 1.5].Holds(a =>
            Math.Abs(Angle.Asin(Angle.Sin(a)) - a) < 1e-7 && Math.Abs(Angle.Atan(Angle.Tan(a)) - a) < 1e-9 &&
            Math.Abs(Angle.Acos(Angle.Cos(a)) - Math.Abs(a)) < 1e-7 && Math.Abs(Angle.Atan2(3 * Angle.Sin(a), 3 * Angle.Cos(a)) - a) < 1e-9);

    [Fact]
    public void Angles_are_ordered_and_the_default_is_none()
    {
        Assert.True(Angle.FromDegrees(41).CompareTo(Angle.FromDegrees(42)) < 0);
        Assert.Equal(0, default(Angle).Radians);
        Assert.Equal(Angle.FromRadians(0), default);
    }
}
