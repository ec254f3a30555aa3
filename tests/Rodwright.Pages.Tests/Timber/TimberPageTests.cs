using Bunit;
using Rodwright.Geometry;
using Rodwright.Pages.Shell;
using Rodwright.Pages.Timber;
using Rodwright.Pages.Work;
using Rodwright.Rod.Timber;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Timber;

namespace Rodwright.Pages.Tests.Timber;

public sealed class TimberPageTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Every_line_of_the_list_every_board_and_the_price_stand_there_as_the_engine_plans_them()
    {
        var (shelf, page, work) = await Open("left-kite-low");
        await using var all = page;
        using var bench = work;
        var view = Show(page, work);
        var made = TimberBench.Of(work.State.Stair!, UsualShop.Of(work.State.Job.Practice.Timber, work.State.Job.Practice.RiserMaterial));
        Assert.Equal(made.Groups.Select(g => g.Marks), view.FindAll(".timber-list .mark").Select(m => m.TextContent));
        Assert.Equal(made.Groups.Sum(g => g.First.IsGluedUp ? g.Strips.Count() : 0), view.FindAll(".timber-list tr.strip").Count);
        Assert.Equal(made.Boards.Select(b => $"{b.Title} {b.Words}"), view.FindAll(".board-figure figcaption").Select(f => f.TextContent));
        Assert.Equal(made.Plan.Boards.Sum(b => b.Strips.Sum(s => s.Cuts.Length)), view.FindAll(".board-figure li").Count);
        Assert.Equal(made.Plan.Boards.Sum(b => b.Strips.Sum(s => s.Cuts.Length)), view.FindAll(".board-figure .hit").Count);
        Assert.Equal("£" + Number.Fixed(made.Costing.Price, 2), view.Find("#price").TextContent);
        Assert.Contains("proven best", view.Find("#timber-state").TextContent, StringComparison.Ordinal);
        Assert.All(view.FindAll(".board-figure .drawing"), d => Assert.Matches("^(Board|Sheet) [0-9]+: ", d.GetAttribute("aria-label")));
        Assert.Null(await shelf.Shop.Newest());
    }

    [Fact]
    public async Task A_piece_picked_stands_out_leads_to_the_rod_and_the_parts_and_gives_way_to_the_next()
    {
        var (_, page, work) = await Open("left-kite-low");
        await using var all = page;
        using var bench = work;
        var view = Show(page, work);
        var groups = TimberBench.Of(work.State.Stair!, UsualShop.Of("redwood", "plywood")).Groups;
        var several = groups.First(g => g.Pieces.Count > 1 && g.Pieces[0].Part.Kind == Rodwright.Joinery.Parts.PartKind.Riser);
        await view.Find($"[data-piece='{several.First.Part.Id}'] .mark").ClickAsync(new());
        Assert.Equal(several.First.Part.Id, work.Pick!.Id);
        Assert.Equal(several.Pieces.Count, view.FindAll(".timber-list .chip").Count);
        await view.FindAll(".timber-list .chip")[1].ClickAsync(new());
        Assert.Equal(several.Pieces[1].Part.Id, work.Pick!.Id);
        Assert.Equal("true", view.FindAll(".timber-list .chip")[1].GetAttribute("aria-pressed"));
        Assert.Equal([$"/jobs/{work.Session.Card.Id}/rod", $"/jobs/{work.Session.Card.Id}/parts", $"/jobs/{work.Session.Card.Id}/round"], view.FindAll(".timber-list a.act").Select(a => a.GetAttribute("href")!));
        await view.Find(".board-figure li button").ClickAsync(new());
        Assert.Equal(view.Find(".board-figure li button").GetAttribute("data-of"), work.Pick!.Id);
    }

    [Fact]
    public async Task What_was_asked_for_last_is_what_is_shown()
    {
        var (_, page, work) = await Open("left-kite-low");
        await using var all = page;
        using var bench = work;
        var view = Show(page, work);
        await view.InvokeAsync(() => work.Take(work.State.Job with { Width = 900 }, "wider"));
        await view.InvokeAsync(() => work.Take(work.State.Job with { Width = 1000 }, "wider still"));
        var made = TimberBench.Of(work.State.Stair!, UsualShop.Of(work.State.Job.Practice.Timber, work.State.Job.Practice.RiserMaterial));
        view.WaitForAssertion(() =>
        {
            Assert.DoesNotContain("again", view.Find("#timber-state").TextContent, StringComparison.Ordinal);
            Assert.Equal("£" + Number.Fixed(made.Costing.Price, 2), view.Find("#price").TextContent);
        }, Patience);
    }

    [Fact]
    public async Task By_a_shop_of_its_own_it_is_reckoned_and_offcuts_go_back_to_its_rack_once()
    {
        var (shelf, page, work) = await Open("left-kite-low");
        await using var all = page;
        using var bench = work;
        var shop = UsualShop.Of(work.State.Job.Practice.Timber, work.State.Job.Practice.RiserMaterial) with { Name = "Weir Lane", Currency = "kr ", Saw = new() { LeastOffcut = 200 } };
        await shelf.Shop.Save(ShopFile.Write(shop), "Ada", 0);
        var view = Show(page, work);
        Assert.StartsWith("kr ", view.Find("#price").TextContent, StringComparison.Ordinal);
        var left = view.FindAll(".offcuts li").Count;
        Assert.True(left > 0);
        await view.Find("#keep-offcuts").ClickAsync(new());
        await view.Find("#really-keep").ClickAsync(new());
        Assert.Equal(left, ShopFile.Read((await shelf.Shop.Newest())!.Text).Value!.Offcuts.Length);
        Assert.Equal(2, (await shelf.Shop.Newest())!.Version);
    }

    [Fact]
    public async Task What_the_shop_has_no_wood_for_and_a_shop_that_no_longer_reads_are_said()
    {
        var (shelf, page, work) = await Open("left-kite-low");
        await using var all = page;
        using var bench = work;
        await shelf.Shop.Save(ShopFile.Write(new Shop { Name = "Bare racks" }), "Ada", 0);
        Assert.Contains("the shop has no", Show(page, work).Find(".finding").TextContent, StringComparison.Ordinal);
        await shelf.Shop.Save("{ \"rodwrightShop\": 1 }", "Ada", 1);
        var view = Show(page, work);
        Assert.Contains("no longer reads", view.Find(".refusal").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(view.FindAll(".board-figure"));
    }

    private static IRenderedComponent<TimberPage> Show(BunitContext page, WorkModel work)
    {
        var view = page.Render<TimberPage>(p => p.AddCascadingValue(work));
        work.Changed += () => view.InvokeAsync(() => view.Render());
        view.WaitForElement("#price", Patience);
        return view;
    }

    private static async Task<(MemoryShelf, BunitContext, WorkModel)> Open(string sample)
    {
        var shelf = new MemoryShelf(TimeProvider.System);
        var page = Bench.Page(shelf);
        var card = await shelf.Add(ShelfDrafts.Made(Samples.Job(sample), "made", "Ada"));
        return (shelf, page, new((await JobSession.Open(shelf, new(), card.Id, () => "Ada"))!, new PageScript(page.JSInterop.JSRuntime)));
    }
}
