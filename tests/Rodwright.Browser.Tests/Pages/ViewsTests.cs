using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

/// <summary>Every view of a job and of the shelf: it shows what it should, and the auditor of accessibility finds nothing.</summary>
[Collection("workshop")]
public sealed class ViewsTests(Workshop workshop)
{
    private Task<Visit> Begin() => Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");

    [Fact]
    public async Task No_view_of_a_job_breaks_a_rule_of_accessibility()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        var job = await visit.Sample("Larkmoor");
        await Audit(visit, "rod");
        await page.ClickAsync("#stages");
        await page.Locator("#stage").FillAsync("20");
        await Audit(visit, "line by line");
        foreach (var view in new[] { "survey", "proposals", "round", "parts", "timber", "assembly", "machining", "regulation", "proof", "sheets", "revisions" })
        {
            await page.GotoAsync($"{job}/{view}");
            await page.Locator("#view section").First.WaitForAsync();
            if (view == "timber") await page.Locator(".board-figure").First.WaitForAsync();
            if (view == "assembly") await page.Locator(".stage-picture").WaitForAsync();
            if (view == "proposals") await page.Locator(".proposal").First.WaitForAsync();
            await page.WaitForTimeoutAsync(600);
            await Audit(visit, view);
        }
    }

    [Fact]
    public async Task Nor_do_the_shelf_a_new_job_the_dark_board_and_the_page_that_asks_for_the_code()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await page.GetByRole(AriaRole.Button, new() { Name = "Dark board" }).ClickAsync();
        await page.WaitForFunctionAsync("() => document.documentElement.dataset.ground === 'dark'");
        await Audit(visit, "dark board");
        await visit.ToShelf();
        await page.Locator(".card").First.WaitForAsync();
        await Audit(visit, "shelf");
        await page.ClickAsync("#new-job");
        await page.Locator("#b-title").WaitForAsync();
        await Audit(visit, "new job");
        await page.GotoAsync(visit.Address + "/enter");
        await Audit(visit, "access code");
    }

    [Fact]
    public async Task The_regulation_stands_clause_by_clause_with_pictures_and_another_can_be_looked_at()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await page.GetByRole(AriaRole.Link, new() { Name = "Regulation" }).ClickAsync();
        await Assertions.Expect(page.Locator(".clause.pass").First).ToBeVisibleAsync();
        Assert.True(await page.Locator(".clause .drawing").CountAsync() >= 4, "too few pictures");
        await visit.Picture("08-regulation");
        await page.Locator("#other-table").SelectOptionAsync("usa-irc-2021");
        await page.Locator(".compare").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Judge the job by it" }).ClickAsync();
        await visit.Kept(2);
        Assert.Equal("usa-irc-2021", await page.Locator("[data-path=regulation] select").InputValueAsync());
        visit.Quiet();
    }

    [Fact]
    public async Task The_proof_stands_joint_by_joint()
    {
        await using var visit = await Begin();
        await visit.Sample("Larkmoor");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Proof" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".page .lead")).ToContainTextAsync("✓ It goes together.");
        Assert.Equal(87, await visit.Page.Locator(".list tbody tr").CountAsync());
        await visit.Picture("09-proof");
        visit.Quiet();
    }

    [Fact]
    public async Task Revisions_are_compared_named_and_taken_back()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await visit.Set("going", "230");
        await visit.Kept(2);
        await visit.Set("width", "900");
        await visit.Kept(3);
        await page.GetByRole(AriaRole.Link, new() { Name = "Revisions" }).ClickAsync();
        await page.GetByLabel("Name of revision 1").FillAsync("as surveyed");
        await page.GetByLabel("Name of revision 1").PressAsync("Tab");
        await page.GetByLabel("Compare revision 1 with now").ClickAsync();
        await Assertions.Expect(page.Locator(".compared")).ToContainTextAsync("225 then, 230 now");
        await Assertions.Expect(page.Locator(".compared")).ToContainTextAsync("860 then, 900 now");
        await Assertions.Expect(page.Locator(".compared .pieces tbody tr").First).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".pieces tr[data-piece=tread-2]")).ToContainTextAsync("40 more");
        await Assertions.Expect(page.Locator(".sheets-again li").First).ToContainTextAsync("Print");
        await visit.Picture("14-revisions");
        await page.Locator(".pieces tr[data-piece=tread-2] .mark").ClickAsync();
        await Assertions.Expect(page.Locator(".pick[data-picked=tread-2]")).ToHaveCountAsync(1);
        await Audit(visit, "compared");
        await page.GetByLabel("Take back revision 1").ClickAsync();
        await visit.Kept(4);
        Assert.Equal(("225", "860"), (await visit.Value("going"), await visit.Value("width")));
        await page.ReloadAsync();
        await Assertions.Expect(page.GetByLabel("Name of revision 1")).ToHaveValueAsync("as surveyed");
        visit.Quiet();
    }

    [Fact]
    public async Task The_shelf_copies_renames_searches_and_puts_away()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Tern House");
        await visit.ToShelf();
        var card = page.Locator(".card", new() { HasText = "Tern House" }).First;
        await card.GetByRole(AriaRole.Button, new() { Name = "Rename" }).ClickAsync();
        await page.Locator(".card form input").FillAsync("Quillfeather Mill <b>& \"sons\"</b>");
        await page.Locator(".card form button[type=submit]").ClickAsync();
        await page.FillAsync("#search", "quillfeather STRAIGHT");
        await Assertions.Expect(page.Locator("[role=status]").First).ToHaveTextAsync("1 job");
        await Assertions.Expect(page.Locator(".card h2")).ToHaveTextAsync("Quillfeather Mill <b>& \"sons\"</b>");
        await visit.Picture("00-shelf");
        await page.Locator(".card").GetByRole(AriaRole.Button, new() { Name = "Copy" }).ClickAsync();
        await visit.RodReady();
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync(", copy");
        await visit.ToShelf();
        await page.FillAsync("#search", "quillfeather");
        await Assertions.Expect(page.Locator(".card")).ToHaveCountAsync(2);
        await page.Locator(".card", new() { HasText = ", copy" }).GetByRole(AriaRole.Button, new() { Name = "Put away", Exact = false }).Last.ClickAsync();
        await Assertions.Expect(page.Locator(".card")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new() { Name = "Put away", Exact = true }).First.ClickAsync();
        await Assertions.Expect(page.Locator(".card h2")).ToContainTextAsync(", copy");
        visit.Quiet();
    }

    [Fact]
    public async Task A_whole_job_by_the_keyboard_alone()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.ToShelf();
        await visit.Reach("#new-job");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("#b-title").WaitForAsync();
        await visit.Reach("#b-title");
        await page.Keyboard.TypeAsync("Made by keys");
        await visit.Reach("#make");
        await page.Keyboard.PressAsync("Enter");
        await visit.RodReady();
        await visit.Reach("#f-going");
        await page.Keyboard.PressAsync("ArrowUp");
        await visit.Kept(2);
        await visit.Reach("#undo");
        await page.Keyboard.PressAsync("Enter");
        await visit.Kept(3);
        await visit.Reach(".rod");
        var before = await page.Locator(".sheet").GetAttributeAsync("style");
        await page.Keyboard.PressAsync("+");
        await page.Keyboard.PressAsync("ArrowRight");
        await page.WaitForFunctionAsync("b => document.querySelector('.sheet').getAttribute('style') !== b", before);
        await visit.Reach("#stages");
        await page.Keyboard.PressAsync("Enter");
        await visit.Reach("#stage");
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(page.Locator(".fresh")).ToHaveCountAsync(1);
        await visit.Reach("nav a[href$=parts]");
        await page.Keyboard.PressAsync("Enter");
        await visit.Reach(".mark");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".pick").WaitForAsync();
        await visit.Reach("nav a[href$=sheets]");
        await page.Keyboard.PressAsync("Enter");
        await visit.Reach("#pack");
        await page.RunAndWaitForDownloadAsync(() => page.Keyboard.PressAsync("Enter"));
        visit.Quiet();
    }

    /// <summary>
    /// The drawing itself is one image to a reader of screens, and looking into its thousands of lines takes the auditor long. The auditor writes a style of its
    /// own into the page, which the page's policy refuses and its console tells: what was complained of before is judged first, and that alone forgotten.
    /// </summary>
    internal static async Task Audit(Visit visit, string where)
    {
        visit.Quiet();
        var result = await visit.Page.RunAxe(new AxeRunContext { Exclude = [new(".sheet > g"), new(".drawing > *")] });
        visit.Complaints.Clear();
        Assert.True(result.Violations.Length == 0, $"{where}: " + string.Join("; ", result.Violations.Select(v => $"{v.Id}: {v.Help} {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}")));
    }
}
