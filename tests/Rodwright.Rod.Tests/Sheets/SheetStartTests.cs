using Rodwright.Drawings.Paper;
using Rodwright.Rod.Sheets;
using Xunit;

namespace Rodwright.Rod.Tests.Sheets;

public sealed class SheetStartTests
{
    private static readonly SheetWords Words = new("piece", "Piece", "Piece", "P1");

    [Fact]
    public void The_scale_wanted_is_kept_when_the_drawing_fits()
    {
        var start = SheetStart.For(Rods.Sample("left-kite-low", "A3", "1:10"), Words, _ => new(1000, 1000));
        Assert.Equal(Scale.OneTo(10), start.Scale);
        Assert.True(start.Fits);
    }

    [Fact]
    public void A_drawing_too_large_for_the_scale_wanted_takes_the_next_smaller_usual_scale()
    {
        // 1000 at 1:2.5 is 400 of paper: more than an A3 has either way once it is framed.
        var start = SheetStart.For(Rods.Sample("left-kite-low", "A3", "1:2.5"), Words, _ => new(1000, 200));
        Assert.Equal(Scale.OneTo(5), start.Scale);
    }

    [Fact]
    public void Without_a_wish_the_largest_scale_that_fits_is_taken()
    {
        var start = SheetStart.For(Rods.Sample("left-kite-low"), Words, _ => new(180, 90));
        Assert.True(start.Scale.IsFull);
        Assert.True(start.Empty.TrueSize);
        Assert.Equal(2, SheetStart.For(Rods.Sample("left-kite-low"), Words, _ => new(700, 90)).Scale.Ratio);
    }

    [Fact]
    public void The_page_is_turned_only_when_that_lets_the_drawing_fit()
    {
        var rod = Rods.Sample("left-kite-low", "A3", "1:1");
        Assert.True(SheetStart.For(rod, Words, _ => new(350, 100)).Empty.Paper is { Width: 420 });
        Assert.True(SheetStart.For(rod, Words, _ => new(100, 280)).Empty.Paper is { Width: 297 });
    }

    [Theory, InlineData("A4"), InlineData("A3"), InlineData("A1"), InlineData("610"), InlineData("1800x1200")]
    public void View_and_panel_lie_in_the_frame_clear_of_title_block_and_bars(string paper)
    {
        var start = SheetStart.For(Rods.Sample("left-kite-low", paper, "1:1"), Words, _ => new(20, 20));
        Assert.True(start.Empty.TrueSize);
        Assert.True(start.Panel is { Width: >= 125, Height: >= 26 });
        Assert.False(start.View.Overlaps(start.Panel));
        foreach (var box in start.Empty.Reserved)
        {
            Assert.False(box.Overlaps(start.Panel));
            Assert.False(box.Overlaps(start.View));
        }
    }

    [Fact]
    public void Title_blocks_say_hand_and_model()
    {
        Assert.Equal("right hand", SheetStart.BlockFor(Rods.Sample("right-kite-top"), Words).Hand);
        Assert.Equal("left hand", SheetStart.BlockFor(Rods.Sample("left-kite-low"), Words).Hand);
        Assert.Equal("straight", SheetStart.BlockFor(Rods.Sample("straight-flight"), Words).Hand);
        var model = SheetStart.BlockFor(Rods.Sample("half-scale-teaching"), Words);
        Assert.Contains("model 1:2", model.Note, StringComparison.Ordinal);
        Assert.Equal("", SheetStart.BlockFor(Rods.Sample("left-kite-low"), Words).Note);
        Assert.Equal("P1", model.Mark);
    }
}
