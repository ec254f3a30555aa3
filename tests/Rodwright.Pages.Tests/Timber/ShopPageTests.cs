using System.Text;
using Bunit;
using Microsoft.AspNetCore.Components.Forms;
using Rodwright.Pages.Shops;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;

namespace Rodwright.Pages.Tests.Timber;

public sealed class ShopPageTests
{
    [Fact]
    public async Task What_is_typed_is_kept_and_who_comes_second_is_told()
    {
        var shelf = new MemoryShelf(TimeProvider.System);
        await using var page = Bench.Page(shelf);
        var view = page.Render<ShopPage>();
        view.Find("[data-path=name]").Change("Weir Lane");
        view.Find("[data-path='rates.hour']").Change("52.5");
        view.FindAll("summary").First(s => s.TextContent.StartsWith("Offcuts", StringComparison.Ordinal)).Click();
        view.Find("#add-offcuts").Click();
        foreach (var (name, text) in new[] { ("id", "K7"), ("material", "redwood"), ("thickness", "38"), ("width", "225"), ("length", "1640") }) view.Find($"[data-path='offcuts[0].{name}']").Change(text);
        await view.Find("form.shop").SubmitAsync();
        var kept = ShopFile.Read((await shelf.Shop.Newest())!.Text).Value!;
        Assert.Equal(("Weir Lane", 52.5, 1640), (kept.Name, kept.Rates.Hour, kept.Offcuts.Single().Length));
        Assert.Contains("version 1", view.Find("#shop-told").TextContent, StringComparison.Ordinal);

        await shelf.Shop.Save(ShopFile.Write(kept with { Name = "Ben's" }), "Ben", 1);
        view.Find("[data-path='saw.kerf']").Change("3");
        await view.Find("form.shop").SubmitAsync();
        Assert.Contains("Ben has changed the shop meanwhile", view.Find(".refusal").TextContent, StringComparison.Ordinal);
        Assert.Equal(2, (await shelf.Shop.Newest())!.Version);
        await view.FindAll(".refusal button")[1].ClickAsync(new());
        Assert.Equal((3, "Weir Lane"), ((await shelf.Shop.Newest())!.Version, ShopFile.Read((await shelf.Shop.Newest())!.Text).Value!.Name));
    }

    [Fact]
    public async Task Everything_that_is_wrong_is_said_at_once_where_it_was_typed_and_nothing_is_kept()
    {
        var shelf = new MemoryShelf(TimeProvider.System);
        await using var page = Bench.Page(shelf);
        var view = page.Render<ShopPage>();
        view.Find("[data-path=name]").Change("");
        view.Find("[data-path='saw.kerf']").Change("a hair");
        view.FindAll("summary").First(s => s.TextContent.StartsWith("Work", StringComparison.Ordinal) || s.TextContent.StartsWith("Operations", StringComparison.Ordinal)).Click();
        view.Find("[data-path='work[2].minutes']").Change("-4");
        await view.Find("form.shop").SubmitAsync();
        Assert.Equal(3, view.FindAll("#shop-faults li").Count);
        foreach (var path in new[] { "name", "saw.kerf", "work[2].minutes" }) Assert.Equal("true", view.Find($"[data-path='{path}']").GetAttribute("aria-invalid"));
        Assert.Null(await shelf.Shop.Newest());
    }

    [Fact]
    public async Task A_file_fills_the_page_and_a_bad_one_is_refused_with_all_its_faults()
    {
        await using var page = Bench.Page(new MemoryShelf(TimeProvider.System));
        var view = page.Render<ShopPage>();
        var input = view.FindComponent<InputFile>();
        input.UploadFiles(InputFileContent.CreateFromText("{ \"rodwrightShop\": 1, \"boards\": [{ \"material\": \"oak\" }] }", "x.shop.json"));
        Assert.True(view.FindAll(".refusals li").Count >= 3);
        input.UploadFiles(InputFileContent.CreateFromBinary(Encoding.UTF8.GetBytes(ShopFile.Write(UsualShop.Of("oak", "oak") with { Name = "Quay Street" })), "y.shop.json"));
        Assert.Empty(view.FindAll(".refusals li"));
        Assert.Equal("Quay Street", view.Find("[data-path=name]").GetAttribute("value"));
    }
}
