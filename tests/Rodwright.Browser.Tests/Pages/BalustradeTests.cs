using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

/// <summary>A stair with its balustrade, in every view.</summary>
[Collection("workshop")]
public sealed class BalustradeTests(Workshop workshop)
{
    [Fact]
    public async Task Rails_are_seen_in_the_round_picked_explained_and_changed_by_their_fields()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Ferrow Croft");
        await visit.Picture("36-balustrade-rod");
        await page.Locator("#jump").SelectOptionAsync("strings");
        await visit.Picture("36-balustrade-strings");
        await visit.ToView("In the round");
        await page.WaitForFunctionAsync("() => document.querySelector('[data-solid=apart]') && getComputedStyle(document.querySelector('.solid-wait')).display === 'none'");
        await page.WaitForTimeoutAsync(1500);
        await visit.Picture("36-balustrade-round");
        await visit.ToView("Parts");
        var rail = page.Locator("tr[data-of^=handrail] .mark").First;
        await rail.ClickAsync();
        await Assertions.Expect(page.Locator(".pick")).ToContainTextAsync("handrail");
        await Assertions.Expect(page.Locator(".pick")).ToContainTextAsync("plumb above nosing");
        await visit.Picture("36-balustrade-parts");
        await visit.ToView("Regulation");
        await visit.Picture("36-balustrade-regulation");
        foreach (var view in new[] { "Proof", "Sheets", "Timber" })
        {
            await visit.ToView(view);
            await page.WaitForTimeoutAsync(2500);
            await visit.Picture($"36-balustrade-{view}");
        }
        visit.Quiet();
    }
}
