using Rodwright.Joinery.Timber;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Timber;

public sealed class GlueUpTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    [Fact]
    public void A_wide_board_is_glued_up_from_equal_strips_no_wider_than_allowed()
    {
        var stair = Stair.SetOut(Samples.Job("left-kite-low")).Value!;
        var kite = stair.Kit.Find("tread-4");
        var glue = GlueUp.Of(kite, stair.Job.Practice);
        Assert.Equal(3, glue.Strips);
        Assert.True(glue.Width <= stair.Job.Practice.GlueStrip);
        Assert.Equal(kite.Blank.Width, glue.Width * glue.Strips, 9);
        Assert.Equal([glue.Width, 2 * glue.Width], glue.Joints);
        Assert.Equal((0, glue.Width), glue.Of(0));
        Assert.Equal(2 * glue.Width, glue.Of(2).From, 9);
        Assert.Equal(kite.Blank.Width, glue.Of(2).To, 9);
        Assert.Equal(4, glue.Narrower().Strips);
        Assert.Equal(kite.Blank.Width / 4, glue.Narrower().Width, 9);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_cutting_list_has_the_strips_that_are_drawn(string name)
    {
        var stair = Stair.SetOut(Samples.Job(name)).Value!;
        var list = CuttingList.Of(stair.Kit, UsualShop.For(stair.Job));
        foreach (var piece in list.Pieces.Where(p => GlueUp.IsOf(p.Part.Kind) && p.Stock == StockKind.Board))
        {
            var glue = GlueUp.Of(piece.Part, stair.Job.Practice);
            Assert.Equal(Enumerable.Repeat(glue.Width, glue.Strips), piece.Woods.Select(w => w.Width), (a, b) => Math.Abs(a - b) < 1e-9);
            Assert.StartsWith(glue.InWords(stair.Kit.Plan.Units), piece.Remark, StringComparison.Ordinal);
        }
    }
}
