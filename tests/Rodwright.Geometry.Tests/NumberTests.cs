using System.Globalization;
using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class NumberTests
{
    [Theory]
    [InlineData(0, 1, "0")]
    [InlineData(-1e-300, 1, "0")]
    [InlineData(-0.04, 1, "0")]
    [InlineData(-0.05, 1, "-0.1")]
    [InlineData(0.05, 1, "0.1")]
    [InlineData(233.728, 2, "233.73")]
    [InlineData(225, 3, "225")]
    [InlineData(12.5, 0, "13")]
    [InlineData(-12.5, 0, "-13")]
    [InlineData(2.675, 2, "2.68")]
    [InlineData(1234567.25, 2, "1234567.25")]
    [InlineData(0.1 + 0.2, 6, "0.3")]
    [InlineData(182.97499999999997, 2, "182.98")]
    [InlineData(-182.97499999999997, 2, "-182.98")]
    [InlineData(182.9749, 2, "182.97")]
    public void Printed_with_at_most_so_many_decimals(double value, int decimals, string printed) => Assert.Equal(printed, Number.Print(value, decimals));

    [Fact]
    public void Printing_and_appending_follow_the_number_format_of_the_invariant_culture() =>
        Gen.Select(Gen.OneOf(Gen.Double[-5000, 5000], Gen.Double[-1, 1], Gen.Double, Gen.Int[-4000, 4000].Select(n => n / 8.0)).Where(double.IsFinite), Gen.Int[0, 5]).Holds((x, decimals) =>
        {
            var text = new System.Text.StringBuilder();
            Number.Append(text, x, decimals);
            var rounded = Math.Round(x, decimals, MidpointRounding.AwayFromZero);
            var wanted = (rounded == 0 ? 0 : rounded).ToString(decimals == 0 ? "0" : "0." + new string('#', decimals), CultureInfo.InvariantCulture);
            return Number.Print(x, decimals) == wanted && text.ToString() == wanted;
        });

    [Theory]
    [InlineData(0, 2, "0.00")]
    [InlineData(-0.001, 2, "0.00")]
    [InlineData(7.5, 3, "7.500")]
    [InlineData(-7.5, 0, "-8")]
    public void Fixed_keeps_its_zeros(double value, int decimals, string printed) => Assert.Equal(printed, Number.Fixed(value, decimals));

    [Fact]
    public void Exact_reads_back_the_same() =>
        Gen.Double.Where(double.IsFinite).Holds(x => double.Parse(Number.Exact(x), CultureInfo.InvariantCulture).Equals(x + 0.0));

    [Fact]
    public void Nothing_is_ever_minus_nothing() =>
        Gen.Select(Gen.Double[-0.6, 0.6], Gen.Int[0, 6]).Holds((x, decimals) =>
            new[] { Number.Print(x, decimals), Number.Fixed(x, decimals) }.All(text => !text.StartsWith('-') || text.Any(c => c is >= '1' and <= '9')));

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("sv-SE")]
    [InlineData("ar-SA")]
    public void No_culture_changes_a_digit(string culture)
    {
        var usual = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            // A real culture writes this otherwise, or the test proves nothing.
            Assert.NotEqual("-1,234.5", (-1234.5).ToString("N1", CultureInfo.CurrentCulture));
            Assert.Equal("-1234.5", Number.Print(-1234.5));
            Assert.Equal("-1234.50", Number.Fixed(-1234.5, 2));
            Assert.Equal("-1234.5", Number.Exact(-1234.5));
            Assert.Equal("(1.5, -2.25)", new Point2(1.5, -2.25).ToString());
            Assert.Equal("(1.5, -2.25, 0)", new Point3(1.5, -2.25, -0.0).ToString());
            Assert.Equal("(0.5, 0.25)", new Vector2(0.5, 0.25).ToString());
            Assert.Equal("41.99°", Angle.FromDegrees(41.987).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = usual;
        }
    }
}
