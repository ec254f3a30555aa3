using CsCheck;
using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Drawings.Tests;

public sealed class LetteringTests
{
    [Fact]
    public void Every_letter_a_drawing_uses_is_in_both_faces()
    {
        const string used = "⌀°×±→↑←↓≤≥∠△½¼¾√–—’‘“”…·²³µ£öüßéàçñ";
        foreach (var c in used) Assert.True(Lettering.Has(c), $"{c} (U+{(int)c:X4}) is missing");
        for (var c = '!'; c <= '~'; c++) Assert.True(Lettering.Has(c), $"{c} is missing");
        Assert.False(Lettering.Has('\uE123'));
    }

    [Fact]
    public void Capitals_are_as_high_as_asked_for()
    {
        var (bottom, top) = Lettering.InkRise("H", 3.5);
        Assert.Equal(0, bottom, 9);
        Assert.Equal(3.5, top, 9);
        Assert.True(Lettering.InkRise("g", 3.5).Bottom < -0.5);
    }

    [Fact]
    public void Width_is_that_of_the_face_file()
    {
        // hmtx of DejaVu Sans Condensed 2.37: figures advance 1172 of 2048 units; H rises 1493.
        Assert.Equal(4 * 1172.0 / 1493 * 5, Lettering.Width("2600", 5), 6);
        Assert.True(Lettering.Width("2600", 5, bold: true) > Lettering.Width("2600", 5));
    }

    [Fact]
    public void A_turned_text_keeps_its_box_and_hangs_on_its_point()
    {
        var text = new TextMark(
            new(100, 50), "riser 7", 3.5, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, Angle.FromDegrees(90));
        var level = text with { Turn = default };
        Assert.Equal(level.Bounds.Width, text.Bounds.Height, 9);
        Assert.Equal(level.Bounds.Height, text.Bounds.Width, 9);
        Assert.Equal(50, text.Bounds.Centre.Y, 9);
        Assert.Equal(100 + 3.5 / 2, text.BaselineStart.X, 9);
        Assert.Equal(50 - text.Width / 2, text.BaselineStart.Y, 9);
    }

    [Fact]
    public void Wrapped_lines_fit_and_lose_no_word()
    {
        Gen.String[Gen.OneOf(Gen.Char['a', 'z'], Gen.Const(' ')), 0, 200].Select(Gen.Double[8, 80]).Holds((text, width) =>
        {
            var lines = FlowText.Wrap(text, width, 2.5);
            Assert.Equal(text.Replace(" ", ""), string.Concat(lines).Replace(" ", ""));
            Assert.All(lines, line => Assert.True(Lettering.Width(line, 2.5) <= width));
        });
    }

    [Fact]
    public void Text_made_to_fit_fits()
    {
        Gen.String[Gen.Char[' ', '~'], 0, 120].Select(Gen.Double[3, 200]).Holds((text, width) =>
        {
            var (fitted, height) = TextFit.Within(text, width, 7);
            Assert.True(Lettering.Width(fitted, height) <= width);
            Assert.InRange(height, 1.8, 7);
        });
        Assert.Equal(("Wall string", 5.0), TextFit.Within("Wall string", 100, 5));
    }
}
