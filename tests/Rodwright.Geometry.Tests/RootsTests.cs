using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class RootsTests
{
    [Fact]
    public void Finds_the_square_root_of_two() => Assert.Equal(Math.Sqrt(2), Roots.Between(x => x * x - 2, 0, 2)!.Value, 12);

    [Fact]
    public void Equal_signs_have_no_root_between() => Assert.Null(Roots.Between(x => x * x + 1, -1, 1));

    [Theory]
    [InlineData(0, 1)]
    [InlineData(-1, 0)]
    public void A_root_at_an_end_is_found(double low, double high) => Assert.Equal(0, Roots.Between(x => x, low, high)!.Value, 12);

    [Fact]
    public void The_chord_of_a_known_arc_gives_back_its_angle() =>
        // chord = 2 r sin(a/2) at house size: values of thousands of millimetres, whose last digit is above 1e-12.
        Gen.Select(Gen.Double[100, 9000], Gen.Double[0.05, 3]).Holds((radius, angle) =>
        {
            var chord = 2 * radius * Angle.Sin(angle / 2);
            return Roots.Between(a => 2 * radius * Angle.Sin(a / 2) - chord, 0, Math.PI) is { } found && Math.Abs(found - angle) < 1e-7;
        });

    [Fact]
    public void A_steep_function_settles_as_closely_as_doubles_allow() =>
        Gen.Select(Gen.Double[1000, 9000], Gen.Double[1, 1e6]).Holds((root, slope) =>
            Roots.Between(x => slope * (x - root) * (1 + x * x), 0, 10000) is { } found && Math.Abs(found - root) < 1e-9);
}
