using System.IO.Compression;
using System.Text;
using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

/// <summary>Cutting list, boards and price of a job, and the shop they are reckoned by.</summary>
[Collection("workshop")]
public sealed class TimberTests(Workshop workshop)
{
    private Task<Visit> Begin(int width = 1280, int height = 800) => Visit.Begin(workshop.Browser, workshop.Bench.Address, width, height, name: "Ada");

    [Fact]
    public async Task A_piece_picked_on_the_list_lights_up_on_its_board_and_is_found_in_the_parts_list()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await visit.ToView("Timber");
        await page.Locator(".board-figure").First.WaitForAsync();
        await Assertions.Expect(page.Locator("#timber-state")).ToContainTextAsync("proven best");
        await Assertions.Expect(page.Locator("#price")).ToContainTextAsync("£");
        await visit.Picture("30-timber");
        var mark = page.Locator(".timber-list .mark").First;
        var of = await mark.GetAttributeAsync("data-of");
        var calm = await Colour(page, of!);
        await mark.ClickAsync();
        await Assertions.Expect(page.Locator($".timber-list tr.lit[data-piece='{of}']")).ToHaveCountAsync(1);
        await page.WaitForFunctionAsync("([of, calm]) => getComputedStyle(document.querySelector(`.board-figure path[data-of='${of}']`)).color !== calm", new[] { of, calm });
        await page.Locator($".board-figure .hit[data-of='{of}']").First.ScrollIntoViewIfNeededAsync();
        await visit.Picture("31-timber-board-lit");
        await page.GetByRole(AriaRole.Link, new() { Name = "In the parts list" }).ClickAsync();
        await Assertions.Expect(page.Locator($"tr.lit[data-of='{of}']")).ToHaveCountAsync(1);
        visit.Quiet();
    }

    [Fact]
    public async Task A_piece_pressed_on_its_board_is_picked_and_a_change_of_the_job_plans_the_boards_again()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await visit.ToView("Timber");
        var piece = page.Locator(".board-figure .hit").First;
        await piece.WaitForAsync();
        var of = await piece.GetAttributeAsync("data-of");
        await piece.ClickAsync();
        await Assertions.Expect(page.Locator($".pick[data-picked='{of}']")).ToHaveCountAsync(1);
        var before = await page.Locator("#timber-state").TextContentAsync();
        await visit.Set("width", "1010");
        await visit.Kept(2);
        await Assertions.Expect(page.Locator("#timber-state")).Not.ToHaveTextAsync(before!);
        await Assertions.Expect(page.Locator("#timber-state")).Not.ToContainTextAsync("again");
        Assert.NotEqual(before, await page.Locator("#timber-state").TextContentAsync());
        visit.Quiet();
    }

    [Fact]
    public async Task Lists_boards_quotation_and_labels_are_downloaded()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await visit.ToView("Timber");
        await page.Locator("#timber-pdf").WaitForAsync();
        foreach (var id in new[] { "#timber-pdf", "#quotation-pdf", "#labels-pdf" }) Assert.StartsWith("%PDF-", Encoding.ASCII.GetString((await Download(id))[..8]), StringComparison.Ordinal);
        using (var book = new ZipArchive(new MemoryStream(await Download("#timber-xlsx")))) Assert.Contains(book.Entries, e => e.FullName == "xl/workbook.xml");
        foreach (var table in new[] { "cutting list", "board plan", "fixings", "costing" })
            Assert.Contains(",", Encoding.UTF8.GetString(await Download($".csv a:text-is('{table}')")), StringComparison.Ordinal);
        await page.Locator("#label-stock").SelectOptionAsync("a4-14");
        Assert.True((await Download("#labels-pdf")).Length > 1000);
        visit.Quiet();

        async Task<byte[]> Download(string link)
        {
            var file = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync(link));
            return await File.ReadAllBytesAsync(await file.PathAsync());
        }
    }

    [Fact]
    public async Task The_timber_is_read_on_a_dark_tablet_and_picked_by_keys_alone()
    {
        await using var visit = await Begin(820, 1180);
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await page.GetByRole(AriaRole.Button, new() { Name = "Dark board" }).ClickAsync();
        await visit.ToView("Timber");
        await page.Locator(".board-figure").First.WaitForAsync();
        await visit.Reach(".timber-list .mark");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".timber-list tr.lit").First.WaitForAsync();
        await visit.Picture("32-timber-tablet");
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), "wider than the tablet");
        await ViewsTests.Audit(visit, "timber");
        visit.Quiet();
    }

    [Fact]
    public async Task A_shop_is_kept_refused_with_everything_that_is_wrong_brought_from_a_file_and_reckoned_by()
    {
        // A bench of its own: a shop is everybody's.
        await using var bench = await BenchProcess.Start();
        await using var visit = await Visit.Begin(workshop.Browser, bench.Address, name: "Ada");
        var page = visit.Page;
        var job = await visit.Sample("Larkmoor");
        await visit.ToView("Timber");
        await page.Locator(".board-figure").First.WaitForAsync();
        var price = await page.Locator("#price").TextContentAsync();
        await page.ClickAsync("#to-shop");
        await page.Locator("[data-path='saw.kerf']").WaitForAsync();
        await Type("[data-path=name]", "Weir Lane");
        await Type("[data-path='saw.kerf']", "wide");
        await page.Locator("summary", new() { HasText = "Boards:" }).ClickAsync();
        await Type("[data-path='boards[1].pricePerMetre']", "");
        await Type("[data-path='rates.hour']", "55");
        await page.ClickAsync("#keep-shop");
        await Assertions.Expect(page.Locator("#shop-faults li")).ToHaveCountAsync(2);
        await Assertions.Expect(page.Locator("[data-path='saw.kerf'][aria-invalid=true]")).ToHaveCountAsync(1);
        await visit.Picture("33-shop-refused");
        await ViewsTests.Audit(visit, "the shop");
        await Type("[data-path='saw.kerf']", "3.5");
        await Type("[data-path='saw.leastOffcut']", "200");
        await Type("[data-path='router.cutter']", "7.75");
        await Type("[data-path='boards[1].pricePerMetre']", "1.7");
        await page.ClickAsync("#keep-shop");
        await Assertions.Expect(page.Locator("#shop-told")).ToContainTextAsync("Weir Lane is kept, version 1");
        await page.GetByRole(AriaRole.Link, new() { Name = "Larkmoor" }).ClickAsync();
        await page.Locator(".board-figure").First.WaitForAsync();
        await Assertions.Expect(page.Locator("#price")).Not.ToHaveTextAsync(price!);
        await Assertions.Expect(page.Locator(".costing")).ToContainTextAsync("£55.00 an hour");

        // The same cutter in whatever is drawn for this shop.
        using (var client = new HttpClient())
        {
            var revision = $"{job}/r/1";
            Assert.Contains("7.75", await client.GetStringAsync($"{revision}/sheets/machining.svg?paper=A3"), StringComparison.Ordinal);
            using var pack = new ZipArchive(await client.GetStreamAsync($"{revision}/pack.zip?paper=A3"));
            var piece = await Text(pack.GetEntry("dxf/T6.dxf")!);
            Assert.Equal(await client.GetStringAsync($"{revision}/machining/T6.dxf"), piece);
            Assert.Contains("TOOL-RADIUS", piece, StringComparison.Ordinal);
        }

        await page.ClickAsync("#keep-offcuts");
        await page.ClickAsync("#really-keep");
        await Assertions.Expect(page.Locator("[role=status]", new() { HasText = "The rack is" })).ToHaveCountAsync(1);
        await page.ClickAsync("#to-shop");
        var file = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Download the file" }).ClickAsync());
        var text = await File.ReadAllTextAsync(await file.PathAsync());
        Assert.Contains("\"offcuts\"", text, StringComparison.Ordinal);
        Assert.Equal("weir-lane.shop.json", file.SuggestedFilename);

        await page.Locator("#shop-file").SetInputFilesAsync(new FilePayload { Name = "bad.shop.json", MimeType = "application/json", Buffer = "{ \"rodwrightShop\": 2, \"boards\": [{}] }"u8.ToArray() });
        await Assertions.Expect(page.Locator(".refusals").First).ToContainTextAsync("name");
        await page.Locator("#shop-file").SetInputFilesAsync(new FilePayload { Name = "ours.shop.json", MimeType = "application/json", Buffer = Encoding.UTF8.GetBytes(text.Replace("Weir Lane", "Quay Street", StringComparison.Ordinal)) });
        await Assertions.Expect(page.Locator("[data-path=name]")).ToHaveValueAsync("Quay Street");
        await page.ClickAsync("#keep-shop");
        await Assertions.Expect(page.Locator("#shop-told")).ToContainTextAsync("version 3");
        visit.Quiet();

        static async Task<string> Text(ZipArchiveEntry entry)
        {
            using var reader = new StreamReader(await entry.OpenAsync());
            return await reader.ReadToEndAsync();
        }

        async Task Type(string field, string words)
        {
            await page.Locator(field).FillAsync(words);
            await page.Locator(field).PressAsync("Tab");
        }
    }

    private static Task<string> Colour(IPage page, string of) => page.EvaluateAsync<string>("of => getComputedStyle(document.querySelector(`.board-figure path[data-of='${of}']`)).color", of);
}
