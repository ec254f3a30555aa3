using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

/// <summary>The wall of proposals: of a job, and of a survey that is no job yet.</summary>
[Collection("workshop")]
public sealed class ChoosingTests(Workshop workshop)
{
    private static readonly string Surveys = Path.Combine(Root(), "samples", "surveys");

    private Task<Visit> Begin(int width = 1280, int height = 800) => Visit.Begin(workshop.Browser, workshop.Bench.Address, width, height, name: "Ada");

    [Fact]
    public async Task A_proposal_taken_is_the_jobs_layout_opens_its_rod_and_is_undone()
    {
        await using var visit = await Begin(1280, 1400);
        var page = visit.Page;
        var job = await visit.Sample("Larkmoor");
        await page.GetByRole(AriaRole.Link, new() { Name = "Proposals" }).ClickAsync();
        await page.Locator(".proposal").First.WaitForAsync();
        await Assertions.Expect(page.Locator("#wall-state")).ToContainTextAsync("proposals, each set out and proved");
        var all = await page.Locator(".proposal").CountAsync();
        Assert.True(all > 5, $"{all} proposals");
        Assert.True(await page.Locator(".unbeaten-mark").CountAsync() > 0);
        await Assertions.Expect(page.Locator(".proposal .drawing").First).ToBeVisibleAsync();
        await visit.Picture("25-proposals");
        await page.Locator("#wall-straight").CheckAsync();
        await Assertions.Expect(page.Locator("#wall-state")).ToContainTextAsync($"of {all} proposals");
        await page.Locator("#wall-straight").UncheckAsync();
        await page.Locator("#wall-order").SelectOptionAsync("FloorArea");
        await page.WaitForFunctionAsync("""
            () => {
                const floors = [...document.querySelectorAll('.measures > div:nth-child(4) dd')].map(d => parseFloat(d.textContent));
                return floors.every((f, i) => i === 0 || floors[i - 1] <= f);
            }
            """);
        var going = await visit.Value("going");
        await page.Locator(".proposal .take").First.ClickAsync();
        await visit.Kept(2);
        await page.WaitForFunctionAsync("() => location.pathname.endsWith('/rod')");
        await visit.RodReady();
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("✓ Complies");
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("✓ Goes together");
        await page.GotoAsync($"{job}/proposals");
        await Assertions.Expect(page.Locator(".taken")).ToHaveCountAsync(1);
        await page.ClickAsync("#undo");
        await visit.Kept(3);
        Assert.Equal(going, await visit.Value("going"));
        visit.Quiet();
    }

    [Fact]
    public async Task Weights_reorder_the_wall_while_somebody_types_elsewhere()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await page.GetByRole(AriaRole.Link, new() { Name = "Proposals" }).ClickAsync();
        await page.Locator(".proposal").First.WaitForAsync();
        await page.Locator(".wishes summary").ClickAsync();
        await page.Locator("#wish-tapered").FillAsync("plenty");
        await page.Locator("#wish-tapered").PressAsync("Tab");
        await Assertions.Expect(page.Locator(".wishes .refusal")).ToContainTextAsync("plenty");
        await page.Locator("#wish-tapered").FillAsync("50");
        await page.Locator("#wish-tapered").PressAsync("Tab");
        // At once, before the wall is there again: it takes what is typed.
        await visit.Set("title", "Typed meanwhile");
        await visit.Kept(3);
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Typed meanwhile");
        await Assertions.Expect(page.Locator("#wall-state")).Not.ToContainTextAsync("Looking");
        await Assertions.Expect(page.Locator(".proposal").First.Locator(".measures > div:nth-child(6) dd")).ToHaveTextAsync("0");
        visit.Quiet();
    }

    [Fact]
    public async Task A_survey_uploaded_is_answered_and_becomes_a_job_by_the_keyboard_on_a_dark_tablet()
    {
        await using var visit = await Begin(820, 1180);
        var page = visit.Page;
        await visit.ToShelf();
        await page.GetByRole(AriaRole.Button, new() { Name = "Dark board" }).ClickAsync();
        await page.ClickAsync("#from-survey");
        await page.Locator("#survey-file").SetInputFilesAsync(Path.Combine(Surveys, "ferry-house.stair.json"));
        await page.Locator(".proposal").First.WaitForAsync();
        await Assertions.Expect(page.Locator(".rejected h4").First).ToBeVisibleAsync();
        await visit.Picture("26-proposals-for-a-survey");
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), "wider than the tablet");
        await ViewsTests.Audit(visit, "proposals for a survey");
        await page.Locator(".proposal .take").First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await visit.RodReady();
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("✓ Goes together");
        visit.Quiet();
    }

    [Fact]
    public async Task An_impossible_survey_is_explained_and_a_bad_file_refused()
    {
        await using var visit = await Begin(1280, 1400);
        var page = visit.Page;
        await page.GotoAsync(visit.Address + "/proposals");
        await page.Locator("#survey-file").SetInputFilesAsync(Path.Combine(Surveys, "lamp-room.stair.json"));
        await Assertions.Expect(page.Locator("#wall-state")).ToContainTextAsync("No layout fits.");
        await Assertions.Expect(page.Locator(".rejected")).ToContainTextAsync("more well");
        await visit.Picture("27-nothing-fits");
        await page.Locator("#survey-file").SetInputFilesAsync(new FilePayload { Name = "bad.stair.json", MimeType = "application/json", Buffer = "{ \"rodwright\": 1 }"u8.ToArray() });
        await Assertions.Expect(page.Locator(".refusals")).ToContainTextAsync("survey");
        visit.Quiet();
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!Directory.Exists(Path.Combine(folder.FullName, "samples", "surveys"))) folder = folder.Parent!;
        return folder.FullName;
    }
}
