using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Rodwright.Workshop.Shops;

namespace Rodwright.Workshop.Tests.Shops;

public sealed class ShopFormTests
{
    private static readonly Shop Full = UsualShop.Of("redwood", "plywood") with
    {
        Name = "Weir Lane", Currency = "kr", Saw = new() { Kerf = 3.25 },
        Offcuts = [new() { Id = "K1", Material = "redwood", Thickness = 38, Width = 225, Length = 1640 }],
    };

    [Fact]
    public void A_shop_comes_back_from_its_form_as_it_went_in() => Assert.Equal(Full, ShopForm.Of(Full).Read().Value);

    [Fact]
    public void Every_field_of_the_file_is_on_the_form()
    {
        var shown = ShopForm.Single.Select(f => f.Path).Concat(ShopForm.Lists.SelectMany(l => l.Columns.Select(c => c.Path))).ToHashSet();
        Assert.Equal(ShopFields.Descriptions.Select(d => d.Path).Where(p => p != "rodwrightShop").Order(), shown.Order());
    }

    [Fact]
    public void What_is_typed_is_what_is_read_and_several_lengths_are_parted_by_commas()
    {
        var form = ShopForm.Of(Full).With("rates.margin", "17.5").With("boards", 0, "lengths", "3000, 3900").With("boards", 0, "quantity", "4").Without("offcuts", 0);
        var shop = form.Read().Value!;
        Assert.Equal((17.5, 4.0), (shop.Rates.Margin, shop.Boards[0].Quantity));
        Assert.Equal([3000, 3900], shop.Boards[0].Lengths);
        Assert.Empty(shop.Offcuts);
    }

    [Fact]
    public void One_row_more_begins_like_the_last_but_for_its_own_name_and_has_a_key_of_its_own()
    {
        var form = ShopForm.Of(Full).Adding("offcuts");
        Assert.Equal(("redwood", "1640"), (form.Rows["offcuts"][1].Cells["material"], form.Rows["offcuts"][1].Cells["length"]));
        Assert.False(form.Rows["offcuts"][1].Cells.ContainsKey("id"));
        Assert.Equal(form.Rows.Values.Sum(r => r.Length), form.Rows.Values.SelectMany(r => r).Select(r => r.Key).Distinct().Count());
        Assert.Contains(form.Read().Findings, f => f.Where.StartsWith("offcuts[1]", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_shop_that_is_not_there_or_no_longer_reads_gives_way_to_the_usual_one()
    {
        var kept = new MemoryShop(TimeProvider.System);
        var job = Samples.Job("left-kite-low");
        var usual = UsualShop.For(job);
        Assert.Equal((usual, 0, false), (await kept.InUse(job)) is var none ? (none.Shop, none.Version, none.IsOwn) : default);
        await kept.Save(ShopFile.Write(Full), "Ada", 0);
        Assert.Equal((Full, 1, true), (await kept.InUse(job)) is var own ? (own.Shop, own.Version, own.IsOwn) : default);
        await kept.Save("{}", "Ada", 1);
        var broken = await kept.InUse(job);
        Assert.Equal((usual, 2, false), (broken.Shop, broken.Version, broken.IsOwn));
        Assert.NotEmpty(broken.Findings);
    }
}
