using Microsoft.Playwright;
using Xunit;

namespace Rodwright.Browser.Tests.Pages;

/// <summary>A job in feet, inches and sixteenths in the pages.</summary>
[Collection("workshop")]
public sealed class InchTests(Workshop workshop)
{
    [Fact]
    public async Task A_job_in_inches_is_typed_stepped_explained_and_kept_in_inches()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Quincy Mill");
        var going = page.Locator("#f-going");
        await going.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
        await Assertions.Expect(going).ToHaveValueAsync("10 1/4");

        await going.FillAsync("10-1/2");
        await going.PressAsync("Enter");
        await visit.Kept(2);
        await Assertions.Expect(going).ToHaveValueAsync("10 1/2");
        await going.PressAsync("ArrowUp");
        await visit.Kept(3);
        await Assertions.Expect(going).ToHaveValueAsync("10 9/16");

        await going.FillAsync("10 cubits");
        await going.PressAsync("Enter");
        await Assertions.Expect(page.Locator("[data-path='going'] .refusal").First).ToContainTextAsync("no length in feet and inches");
        // The bar under the board is as long as it says, in inches.
        Assert.EndsWith("\"", await page.Locator(".bar-words").TextContentAsync(), StringComparison.Ordinal);
        visit.Quiet();
    }

    [Fact]
    public async Task Survey_and_proposals_of_a_job_in_inches_are_told_in_feet_and_inches()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Quincy Mill");
        await visit.ToView("Survey");
        await page.Locator(".survey-board .picture svg").WaitForAsync();
        var add = page.Locator("details[data-add='survey.walls']");
        await add.Locator("summary").ClickAsync();
        await add.Locator("input").FillAsync("14' 2 1/2");
        await add.Locator("button").ClickAsync();
        await visit.Kept(2);
        await Assertions.Expect(page.Locator("#s-survey-walls-0--length")).ToHaveValueAsync("14' 2 1/2");
        await Assertions.Expect(page.Locator(".survey-board .picture")).ToContainTextAsync("14' 2 1/2\"");
        Assert.DoesNotMatch(@"\bmm\b", await page.Locator(".survey-page").InnerTextAsync());

        await visit.ToView("Proposals");
        await page.Locator(".proposal").First.WaitForAsync();
        await Assertions.Expect(page.Locator(".measures dd").First).ToContainTextAsync("\" off the ideal");
        Assert.DoesNotMatch(@"\bmm\b|m²|m³", await page.Locator(".choosing").InnerTextAsync());
        await page.Locator(".proposal .take").First.ClickAsync();
        await visit.Kept(3);
        await visit.RodReady();
        await page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
        Assert.Matches(@"^\d+( \d/[248])?$", await page.Locator("#f-going").InputValueAsync());
        visit.Quiet();
    }

    [Fact]
    public async Task Sheets_are_offered_on_north_american_paper_and_a_new_job_may_be_begun_in_inches()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Quincy Mill");
        await visit.ToView("Sheets");
        await Assertions.Expect(page.Locator(".sheet-choice select").First).ToHaveValueAsync("Tabloid");
        await page.Locator(".sheets li").First.WaitForAsync();
        await Assertions.Expect(page.Locator(".sheets")).ToContainTextAsync("Tabloid");

        await visit.ToShelf();
        await page.ClickAsync("#new-job");
        await page.FillAsync("#b-title", "Pier loft");
        await page.GetByText("feet and inches", new() { Exact = true }).First.ClickAsync();
        await page.FillAsync("#b-height", "8' 10 1/2");
        await page.FillAsync("#b-width", "38");
        await page.ClickAsync("#make");
        await visit.RodReady();
        await page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
        await Assertions.Expect(page.Locator("#f-survey-floorToFloor")).ToHaveValueAsync("8' 10 1/2");
        visit.Quiet();
    }
}
