using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public sealed class UnitsTests
{
    private static readonly Units Inches = Units.Inches;

    /// <summary>Spelling, and what it is in whole inches and sixty-fourths.</summary>
    [Theory]
    [InlineData("10", 10, 0)]
    [InlineData("10.25", 10, 16)]
    [InlineData(".5", 0, 32)]
    [InlineData("10 1/4", 10, 16)]
    [InlineData("10-1/4", 10, 16)]
    [InlineData("10-1/4\"", 10, 16)]
    [InlineData("10 - 1/4", 10, 16)]
    [InlineData("10¼", 10, 16)]
    [InlineData("10 ¼ in", 10, 16)]
    [InlineData("1 1/8", 1, 8)]
    [InlineData("3/8", 0, 24)]
    [InlineData("9/8", 1, 8)]
    [InlineData("3⁄8″", 0, 24)]
    [InlineData("9' 1 3/4\"", 109, 48)]
    [InlineData("9'1-3/4\"", 109, 48)]
    [InlineData("9'-1 3/4\"", 109, 48)]
    [InlineData("9′ 1¾″", 109, 48)]
    [InlineData("9’ 1 3/4”", 109, 48)]
    [InlineData("9' 1 3/4''", 109, 48)]
    [InlineData("9 ft 1 3/4 in", 109, 48)]
    [InlineData("9 feet 1 inch", 109, 0)]
    [InlineData("9ft. 1in.", 109, 0)]
    [InlineData("9'", 108, 0)]
    [InlineData("9' 0", 108, 0)]
    [InlineData("7.5'", 90, 0)]
    [InlineData("  6' 8\"  ", 80, 0)]
    [InlineData("7 11/16", 7, 44)]
    [InlineData("0", 0, 0)]
    public void The_trades_own_spellings_are_read_exactly(string text, int inches, int sixtyFourths)
    {
        Assert.True(Inches.TryRead(text, out var read));
        // 25.4 is 127 fifths: whole numbers, divided once.
        Assert.Equal((64 * inches + sixtyFourths) * 127 / (5.0 * 64), read);
    }

    [Theory]
    [InlineData("-3/8", -9.525)]
    [InlineData("−1 1/2\"", -38.1)]
    [InlineData("-4' 2", -1270)]
    [InlineData("-0", 0)]
    public void A_minus_stands_before_the_whole(string text, double millimetres)
    {
        Assert.True(Inches.TryRead(text, out var read));
        Assert.Equal(millimetres, read);
        Assert.False(double.IsNegative(read) && read == 0);
    }

    [Theory]
    [InlineData("")]
    [InlineData("wide")]
    [InlineData("NaN")]
    [InlineData("10 mm")]
    [InlineData("10,25")]
    [InlineData("1e3")]
    [InlineData("1/0")]
    [InlineData("10 9/8")]
    [InlineData("10 1/")]
    [InlineData("/4")]
    [InlineData("10 1/4/8")]
    [InlineData("9' 13\"")]
    [InlineData("9' 1' 3\"")]
    [InlineData("9\" 1'")]
    [InlineData("10\"\"\"")]
    [InlineData("10--1/4")]
    [InlineData("9-1")]
    [InlineData("1 000")]
    [InlineData("--3")]
    [InlineData("1/4096")]
    [InlineData("9999999999999999999999999999999999999999999")]
    public void Anything_else_is_refused(string text) => Assert.False(Inches.TryRead(text, out _));

    [Theory]
    [InlineData(0.0, "0\"")]
    [InlineData(9.525, "3/8\"")]
    [InlineData(260.35, "10 1/4\"")]
    [InlineData(914.4, "36\"")]
    [InlineData(1219.2, "4' 0\"")]
    [InlineData(2032.0, "6' 8\"")]
    [InlineData(3835.4, "12' 7\"")]
    [InlineData(2787.65, "9' 1 3/4\"")]
    [InlineData(-38.1, "-1 1/2\"")]
    [InlineData(-0.2, "0\"")]
    [InlineData(1219.0, "4' 0\"")]
    public void A_length_is_printed_to_the_nearest_sixteenth(double millimetres, string text) => Assert.Equal(text, Inches.Print(millimetres));

    [Theory]
    // A rise of 107 inches in 14: 7.642857, which is 7 5/8 and 0.0179 more.
    [InlineData(107 * 25.4 / 14, "7 5/8\" heavy", "7 5/8\" heavy (7.643\")")]
    [InlineData(194.0, "7 5/8\" heavy", "7 5/8\" heavy (7.638\")")]
    [InlineData(196.85, "7 3/4\"", "7 3/4\"")]
    [InlineData(220.0, "8 11/16\" light", "8 11/16\" light (8.661\")")]
    public void A_length_off_its_sixteenth_is_called_heavy_or_light_and_a_judged_one_shows_its_decimals(double millimetres, string fine, string judged)
    {
        Assert.Equal(fine, Inches.Print(millimetres, 2));
        Assert.Equal(judged, Inches.Judged(millimetres));
    }

    [Fact]
    public void Gaps_of_a_proof_are_told_in_decimals_of_an_inch() => Assert.Equal("0.0004\"", Inches.Print(0.01, 3));

    [Fact]
    public void Millimetres_print_as_they_always_did()
    {
        Assert.Equal(("225.5", "225.46", "225.46 mm", "225.5"), (Units.Millimetres.Print(225.46), Units.Millimetres.Print(225.46, 2), Units.Millimetres.With(225.46), Units.Millimetres.Fixed(225.46, 1)));
        Assert.Equal("20 to 600 mm", Units.Millimetres.Range(20, 600));
    }

    [Fact]
    public void What_is_printed_lies_within_half_a_sixteenth_of_the_true_value() => Gen.Double[-5000, 5000].Holds(length =>
    {
        Assert.True(Inches.TryRead(Inches.Print(length), out var read));
        Assert.InRange(Math.Abs(read - length), 0, Units.Inch / 32 + 1e-6);
    });

    [Fact]
    public void What_is_typed_reads_back_as_the_same_double() => Gen.Double[-70000, 70000].Where(v => v == 0 || Math.Abs(v) > 1e-9).Holds(length =>
    {
        Assert.True(Inches.TryRead(Inches.Typed(length), out var read), Inches.Typed(length));
        Assert.Equal(length, read);
    });

    [Fact]
    public void Whole_sixteenths_and_millimetres_are_typed_short_and_come_back()
    {
        Gen.Int[0, 40000].Holds(sixteenths =>
        {
            var length = sixteenths * 127 / 80.0;
            Assert.DoesNotContain(".", Inches.Typed(length), StringComparison.Ordinal);
            Assert.True(Inches.TryRead(Inches.Typed(length), out var read));
            Assert.Equal(length, read);
        });
        Gen.Int[-30000, 30000].Holds(millimetres =>
        {
            Assert.True(Inches.TryRead(Inches.Typed(millimetres), out var read));
            Assert.Equal(millimetres, read);
        });
    }

    [Fact]
    public void Every_size_that_is_offered_is_the_double_its_text_reads_as() => Gen.Double[0, 5000].Holds(length =>
    {
        foreach (var size in new[] { Inches.Stock(length), Inches.Up(length), Inches.Down(length), Inches.Nearby(length), Inches.Up(length, 5) })
            Assert.DoesNotContain(".", Inches.Typed(size), StringComparison.Ordinal);
    });

    [Fact]
    public void Up_and_down_go_to_the_next_whole_step()
    {
        Assert.Equal((195.0, 194.0), (Units.Millimetres.Up(194.2), Units.Millimetres.Down(194.2)));
        Assert.Equal((195.2625, 193.675), (Inches.Up(194.2), Inches.Down(194.2)));
        // A length that is whole already stays.
        Assert.Equal((196.85, 196.85), (Inches.Up(196.85), Inches.Down(196.85)));
    }
}
