using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

/// <summary>Regulation tables: read, compared, made a shop's own, changed, judged by, and taken away.</summary>
[Collection("workshop")]
public sealed class TablesTests(Workshop workshop)
{
    private Task<Visit> Begin(int width = 1280, int height = 800) => Visit.Begin(workshop.Browser, workshop.Bench.Address, width, height, name: "Ada");

    [Fact]
    public async Task A_table_is_read_from_the_shelf_on()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.ToShelf();
        await page.GetByRole(AriaRole.Link, new() { Name = "Regulations" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Wales, Approved Document K, 1998 edition, private stair" }).ClickAsync();
        await Assertions.Expect(page.Locator(".clause-list")).ToContainTextAsync("245 to 260 mm with a rise of 155 to 220 mm, or 223 to 300 mm with a rise of 165 to 200 mm");
        await Assertions.Expect(page.Locator(".clause-list")).ToContainTextAsync("not checked against the document");
        await visit.Picture("16-regulation-table");
        visit.Quiet();
    }

    [Fact]
    public async Task Three_tables_stand_side_by_side_and_their_differences_are_in_words()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await page.GotoAsync(visit.Address + "/regulations");
        foreach (var title in new[] { "England, Approved Document K, 2013 edition, private stair", "United States, International Residential Code, 2021 edition", "United States, International Residential Code, 2024 edition" })
            await page.GetByLabel("Compare " + title).CheckAsync();
        await page.ClickAsync("#compare");
        await page.Locator(".compared-tables").WaitForAsync();
        Assert.Equal(5, await page.Locator(".compared-tables thead th").CountAsync());
        await Assertions.Expect(Row(page, "The pitch")).ToContainTextAsync("≠ not in all");
        await Assertions.Expect(Row(page, "The rise")).ToContainTextAsync("≠ different");
        await page.Locator("#differences").CheckAsync();
        await Assertions.Expect(page.Locator(".compared-tables tbody tr:not(.differs)")).ToHaveCountAsync(0);
        await visit.Picture("17-tables-compared");
        await page.Locator("#table-0").SelectOptionAsync("");
        await page.Locator("#differences").UncheckAsync();
        // The two editions of one code differ in their numbering alone.
        await Assertions.Expect(page.Locator(".compared-tables tr.differs")).ToHaveCountAsync(0);
        visit.Quiet();
    }

    [Fact]
    public async Task A_shops_own_table_is_made_refused_kept_judges_a_job_and_stays_while_it_does()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await page.GotoAsync(visit.Address + "/regulations/england-2013-private");
        await page.ClickAsync("#make-own");
        await page.Locator("#t-title").FillAsync("Heron Mill, our stairs");
        await page.Locator("#t-title").PressAsync("Tab");
        await Assertions.Expect(page.Locator("#t-id")).ToHaveValueAsync("own-heron-mill-our-stairs");
        await page.GetByRole(AriaRole.Button, new() { Name = "Change it: the going of the straight steps, 1.3, Table 1.1" }).ClickAsync();
        await page.GetByLabel("Least, mm").FillAsync("wide");
        await page.ClickAsync("#keep");
        // Everything wrong at once, each beside its field.
        await Assertions.Expect(page.Locator(".own-clause [role=alert]")).ToHaveCountAsync(2);
        await visit.Picture("18-own-table-refused");
        await page.GetByLabel("Least, mm").FillAsync("230");
        await page.GetByLabel("Where the number comes from").FillAsync("what our customers like to walk");
        await page.ClickAsync("#keep");
        await page.WaitForURLAsync("**/regulations/own-heron-mill-our-stairs");
        await Assertions.Expect(page.Locator("tr.own")).ToContainTextAsync("230 to 300 mm");

        await visit.Sample("Larkmoor");
        await page.Locator("[data-path=regulation] select").SelectOptionAsync("own-heron-mill-our-stairs");
        await visit.Kept(2);
        await Assertions.Expect(page.Locator(".finding.breach").First).ToContainTextAsync("230 to 300 mm");
        await page.GetByRole(AriaRole.Link, new() { Name = "Regulation", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".clause.fail").First).ToContainTextAsync("the shop's own");
        await page.GetByRole(AriaRole.Link, new() { Name = "Read this table" }).ClickAsync();
        await Assertions.Expect(page.Locator("#remove")).ToBeDisabledAsync();
        await Assertions.Expect(page.Locator("#used")).ToContainTextAsync("One job is or was judged by it");

        // Changed, the job is judged by what it says now.
        await page.ClickAsync("#change");
        await page.GetByLabel("Least, mm").FillAsync("222");
        await page.ClickAsync("#keep");
        await Assertions.Expect(page.Locator("tr.own")).ToContainTextAsync("222 to 300 mm");
        await page.GotoBack("/jobs/");
        await page.Locator(".clauses").WaitForAsync();
        await Assertions.Expect(page.Locator(".clause.fail")).ToHaveCountAsync(0);
        visit.Quiet();
    }

    [Fact]
    public async Task A_table_brought_in_as_a_file_is_given_out_again_and_removed_when_no_job_uses_it()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await page.GotoAsync(visit.Address + "/regulations");
        await page.Locator("#table-file").SetInputFilesAsync(File("""{ "rodwrightRegulation": 1, "id": "own-alder", "title": "", "clauses": [] }"""));
        await Assertions.Expect(page.Locator(".refusals")).ToContainTextAsync("Nothing was kept");
        await page.Locator("#table-file").SetInputFilesAsync(File("""{ "rodwrightRegulation": 1, "id": "own-alder", "title": "Alder House", "basedOn": "scotland-private" }"""));
        await page.GetByRole(AriaRole.Link, new() { Name = "Alder House" }).ClickAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Download the file" }).ClickAsync());
        Assert.Equal("own-alder.regulation.json", download.SuggestedFilename);
        await page.ClickAsync("#remove");
        await page.ClickAsync("#really");
        await page.WaitForURLAsync("**/regulations");
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "Alder House" })).ToHaveCountAsync(0);
        visit.Quiet();

        static FilePayload File(string text) => new() { Name = "x.regulation.json", MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(text) };
    }

    [Fact]
    public async Task No_page_of_tables_breaks_a_rule_of_accessibility_on_a_laptop_or_a_tablet()
    {
        foreach (var (width, height) in new[] { (1280, 800), (800, 1280) })
        {
            await using var visit = await Begin(width, height);
            var page = visit.Page;
            foreach (var (path, ready) in new[]
            {
                ("/regulations", "#compare"), ("/regulations/usa-irc-2024", ".clause-list"), ("/regulations/new?after=wales-1998-private", "#keep"),
                ("/regulations/compare?table=england-2013-private&table=din-18065-2020&table=scotland-private", ".compared-tables"),
            })
            {
                await page.GotoAsync(visit.Address + path);
                await page.Locator(ready).WaitForAsync();
                if (path.Contains("new", StringComparison.Ordinal))
                {
                    await page.GetByRole(AriaRole.Button, new() { Name = "Change it: the going of the straight steps, 1.3a" }).ClickAsync();
                    await page.ClickAsync("#keep");
                    await page.Locator(".own-clause [role=alert]").First.WaitForAsync();
                }
                await ViewsTests.Audit(visit, $"{path} at {width}");
                Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), $"{path} is wider than {width}");
                if (width == 800 && path.Contains("compare", StringComparison.Ordinal)) await visit.Picture("19-tables-on-a-tablet");
            }
        }
    }

    [Fact]
    public async Task Two_tables_are_compared_by_the_keyboard_alone()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await page.GotoAsync(visit.Address + "/regulations");
        await page.GetByLabel("Compare Scotland, Technical Handbook, Domestic, section 4.3, private stair").FocusAsync();
        await page.Keyboard.PressAsync("Space");
        await page.GetByLabel("Compare Ireland, Technical Guidance Document K, 2014, private stair").FocusAsync();
        await page.Keyboard.PressAsync("Space");
        await Assertions.Expect(page.Locator("#compare")).ToBeEnabledAsync();
        await page.Locator("#compare").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".compared-tables").WaitForAsync();
        visit.Quiet();
    }

    private static ILocator Row(IPage page, string title) => page.Locator(".compared-tables tbody tr", new() { Has = page.GetByRole(AriaRole.Rowheader, new() { Name = title, Exact = true }) });
}

file static class Back
{
    /// <summary>Goes back as the browser does until an address is reached.</summary>
    public static async Task GotoBack(this IPage page, string part)
    {
        for (var i = 0; i < 6 && !page.Url.Contains(part, StringComparison.Ordinal); i++) await page.GoBackAsync();
    }
}
