using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

/// <summary>The order of assembly, stage by stage.</summary>
[Collection("workshop")]
public sealed class AssemblyTests(Workshop workshop)
{
    [Fact]
    public async Task It_is_gone_through_by_keys_and_presses_on_a_laptop()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await visit.ToView("Assembly");
        await page.Locator(".stage-picture .drawing").WaitForAsync();
        await visit.Reach("#stage-on");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#stage-told")).ToContainTextAsync("2. ");
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(page.Locator("#stage-told")).ToContainTextAsync("3. ");
        await visit.Picture("34-assembly");
        await page.Keyboard.PressAsync("End");
        await Assertions.Expect(page.Locator("#stage-on")).ToBeDisabledAsync();
        var piece = page.Locator(".stage-words .chip").First;
        await piece.ClickAsync();
        await Assertions.Expect(page.Locator($".pick[data-picked='{await piece.GetAttributeAsync("data-of")}']")).ToHaveCountAsync(1);
        visit.Quiet();
    }

    [Fact]
    public async Task On_a_tablet_the_picture_and_what_is_to_be_done_are_seen_together()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, 820, 1180, touch: true, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Ferrow Croft");
        await visit.ToView("Assembly");
        await page.Locator(".stage-picture .drawing").WaitForAsync();
        foreach (var panel in new[] { ".fields", ".found" })
        {
            await page.Locator($"{panel} > .fold").TapAsync();
            await page.Locator($"{panel} > .fold[aria-expanded=false]").WaitForAsync();
        }
        await page.Locator("#stage-on").TapAsync();
        await page.Locator("#stage-on").TapAsync();
        await Assertions.Expect(page.Locator("#stage-told")).ToContainTextAsync("3. ");
        await visit.Picture("35-assembly-tablet");
        Assert.True(await page.EvaluateAsync<bool>("""
            () => {
                const room = document.querySelector('#view').getBoundingClientRect();
                const seen = e => { const box = document.querySelector(e).getBoundingClientRect(); return box.top >= room.top - 1 && box.bottom <= room.bottom + 1; };
                return document.documentElement.scrollWidth <= innerWidth && seen('.stage-picture') && seen('.stage-words > p');
            }
            """), "not all of it is seen at once");
        await ViewsTests.Audit(visit, "assembly");
        visit.Quiet();
    }
}
