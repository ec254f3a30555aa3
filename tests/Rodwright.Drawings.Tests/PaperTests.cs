using Rodwright.Drawings.Paper;
using Rodwright.Geometry;
using Xunit;

namespace Rodwright.Drawings.Tests;

public sealed class PaperTests
{
    [Theory]
    [InlineData("A4", 210, 297)]
    [InlineData("a4 landscape", 297, 210)]
    [InlineData("A3", 420, 297)]
    [InlineData("A3 portrait", 297, 420)]
    [InlineData(" a0 ", 1189, 841)]
    [InlineData("594x1200", 594, 1200)]
    [InlineData("300.5 x 200", 300.5, 200)]
    [InlineData("letter", 215.9, 279.4)]
    [InlineData("Tabloid", 431.8, 279.4)]
    [InlineData("ledger", 431.8, 279.4)]
    [InlineData("arch c", 609.6, 457.2)]
    [InlineData("Arch D", 914.4, 609.6)]
    [InlineData("Arch E", 1219.2, 914.4)]
    [InlineData("Arch E1", 1066.8, 762)]
    [InlineData("ANSI D portrait", 558.8, 863.6)]
    [InlineData("ansi e", 1117.6, 863.6)]
    [InlineData("24inx36in", 609.6, 914.4)]
    [InlineData("17 1/2\" x 23\"", 444.5, 584.2)]
    public void Sheets_are_read(string text, double width, double height)
    {
        Assert.True(PaperStock.TryParse(text, out var stock, out var reason), reason);
        Assert.False(stock.IsRoll);
        Assert.Equal(width, stock.Width, 1e-9);
        Assert.Equal(height, stock.Height!.Value, 1e-9);
    }

    [Theory]
    [InlineData("610", 610)]
    [InlineData("roll 914", 914)]
    public void A_roll_gives_the_length_needed(string text, double across)
    {
        Assert.True(PaperStock.TryParse(text, out var stock, out _));
        var page = stock.PageFor(3120.4, 500);
        Assert.Equal((3121, across), (page.Width, page.Height));
        Assert.True(stock.PageFor(9000, 500).Width <= PaperStock.LongestPage);
    }

    [Theory]
    [InlineData("A7", "“a7” is no paper known here: write A4 to A0, Letter, Tabloid, Arch C to E, ANSI C to E, 610, 914 or a size like 594x1200 or 24inx36in")]
    [InlineData("A3 sideways", "“sideways” does not say how A3 lies: write portrait or landscape")]
    [InlineData("50x900", "50 mm is too narrow to draw on: give at least 100 mm each way")]
    [InlineData("900x6000", "6000 mm is longer than a page can be: give at most 5080 mm each way")]
    [InlineData("", "“” is no paper known here: write A4 to A0, Letter, Tabloid, Arch C to E, ANSI C to E, 610, 914 or a size like 594x1200 or 24inx36in")]
    [InlineData("-5x900", "“-5x900” is no paper known here: write A4 to A0, Letter, Tabloid, Arch C to E, ANSI C to E, 610, 914 or a size like 594x1200 or 24inx36in")]
    [InlineData("1,5x900", "“1,5x900” is no paper known here: write A4 to A0, Letter, Tabloid, Arch C to E, ANSI C to E, 610, 914 or a size like 594x1200 or 24inx36in")]
    public void Wrong_paper_is_told_why(string text, string why)
    {
        Assert.False(PaperStock.TryParse(text, out _, out var reason));
        Assert.Equal(why, reason);
    }

    [Fact]
    public void A_sheet_is_turned_only_when_that_lets_the_drawing_fit()
    {
        var a4 = PaperStock.Of(PaperSize.A4);
        Assert.Equal(297, a4.PageFor(280, 200).Width);
        Assert.Equal(210, a4.PageFor(200, 200).Width);
        Assert.Equal(210, a4.PageFor(900, 900).Width);
    }

    [Theory]
    [InlineData("1:1", 1)]
    [InlineData("1:2.5", 2.5)]
    [InlineData("20", 20)]
    [InlineData(" 1 : 7 ", 7)]
    [InlineData("full", 1)]
    [InlineData("half size", 2)]
    [InlineData("3\"", 4)]
    [InlineData("3 in", 4)]
    [InlineData("1 1/2 in", 8)]
    [InlineData("1 1/2", 8)]
    [InlineData("1\" = 1' 0\"", 12)]
    [InlineData("3/4\" = 1'-0\"", 16)]
    [InlineData("3/4 to the foot", 16)]
    [InlineData("½″", 24)]
    public void Scales_are_read(string text, double ratio)
    {
        Assert.True(Scale.TryParse(text, out var scale, out var reason), reason);
        Assert.Equal(ratio, scale.Ratio);
        Assert.Equal(scale, Scale.TryParse(scale.ToString(), out var again, out _) ? again : null);
    }

    [Theory]
    [InlineData("2:1", "“2:1” is not a scale: write 1:5, with 1 before the colon")]
    [InlineData("quarter", "“quarter” is not a scale: write 1:5, 1:2.5 or 5, or inches to the foot like 1 1/2 in")]
    [InlineData("3\" = 1 yard", "“3\" = 1 yard” is not a scale: write 1:5, 1:2.5 or 5, or inches to the foot like 1 1/2 in")]
    [InlineData("24 in", "“24 in” is out of reach: scales run from full size to 1:1000")]
    [InlineData("0", "1:0 is out of reach: scales run from 1:1 to 1:1000")]
    [InlineData(null, "“” is not a scale: write 1:5, 1:2.5 or 5, or inches to the foot like 1 1/2 in")]
    public void Wrong_scales_are_told_why(string? text, string why)
    {
        Assert.False(Scale.TryParse(text, out _, out var reason));
        Assert.Equal(why, reason);
    }

    [Fact]
    public void A_scale_is_told_as_a_scale_rule_says_it_and_read_back()
    {
        Assert.Equal(
            ["full size", "half size", "3\" = 1' 0\"", "1 1/2\" = 1' 0\"", "1\" = 1' 0\"", "3/4\" = 1' 0\"", "1/2\" = 1' 0\"", "3/8\" = 1' 0\"", "1/4\" = 1' 0\""],
            Scale.UsualInches.Select(s => s.Told(Units.Inches)));
        Assert.All(Scale.UsualInches, s => Assert.Equal(s, Scale.TryParse(s.Told(Units.Inches), out var read, out _) ? read : null));
        Assert.Equal(("1:5", "1:5"), (Scale.OneTo(5).Told(Units.Millimetres), Scale.OneTo(5).Told(Units.Inches)));
    }

    [Fact]
    public void The_largest_usual_scale_that_fits_is_chosen()
    {
        Assert.Equal(Scale.OneTo(10), Scale.ToFit(3000, 1500, 380, 200));
        Assert.Equal(Scale.Full, Scale.ToFit(300, 150, 380, 200));
        Assert.Equal(50, Scale.ToFit(1e6, 1, 100, 100).Ratio);
    }
}
