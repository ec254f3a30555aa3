using Rodwright.Rod;
using Rodwright.Rod.Board;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shops;

namespace Rodwright.Workshop.Tests.Shops;

public sealed class ShopRodsTests
{
    private static readonly RodStyle Style = new(PaperFit.Usual[0], null, "");

    [Fact]
    public async Task A_rod_is_cut_with_the_cutters_the_shop_keeps_and_with_usual_ones_where_it_keeps_none()
    {
        var shop = new MemoryShop(TimeProvider.System);
        var state = BenchState.Of(Samples.Job("left-kite-low"));
        Assert.Equal(ShopRouter.Usual(state.Job.Units), (await shop.Rod(state, Style)).Router);
        await shop.Save(ShopFile.Write(UsualShop.For(state.Job) with { Name = "Weir Lane", Router = new() { Cutter = 7.75 } }), "Ada", 0);
        var rod = await shop.Rod(state, Style);
        Assert.Equal((7.75, state.Stair), (rod.Router.Cutter, rod.Stair));
    }

    [Fact]
    public async Task There_is_no_rod_of_a_stair_that_cannot_be() =>
        await Assert.ThrowsAsync<ArgumentException>(() => new MemoryShop(TimeProvider.System).Rod(new(Samples.Job("left-kite-low"), null, null, []), Style));
}
