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
        await page.Locator("#jump").SelectOptionAsync(new SelectOptionValue { Index = 2 });
        await visit.Picture("36-balustrade-strings");
        await visit.ToView("In the round");
        await page.Locator(".solid[data-state=ready]").WaitForAsync();
        await visit.Picture("36-balustrade-round");
        await page.Locator("[data-solid=apart]").FillAsync("60");
        await visit.Picture("36-balustrade-apart");
        await visit.ToView("Parts");
        await page.Locator("tr[data-of^=handrail] .mark").First.ClickAsync();
        await Assertions.Expect(page.Locator(".pick")).ToContainTextAsync("handrail");
        await Assertions.Expect(page.Locator(".pick")).ToContainTextAsync("top, plumb above nosing");
        await page.Locator("tr[data-of^=baluster] .mark").First.ClickAsync();
        await Assertions.Expect(page.Locator(".pick")).ToContainTextAsync("pieces with this mark");
        await visit.ToView("Timber");
        await page.Locator(".timber-list tr.lit").First.WaitForAsync();
        await visit.Picture("36-balustrade-timber");
        // Picked in the parts list, found on the rod.
        await visit.ToView("Parts");
        await page.Locator("tr[data-of^=handrail] .mark").First.ClickAsync();
        var rail = await page.Locator("tr[data-of^=handrail]").First.GetAttributeAsync("data-of");
        var accent = await page.EvaluateAsync<string>("() => getComputedStyle(document.querySelector('.views a[aria-current]')).borderBottomColor");
        await visit.ToView("Rod");
        await visit.RodReady();
        Assert.True(await page.EvaluateAsync<int>(
            "([of, accent]) => [...document.querySelectorAll(`.sheet [data-of='${of}']`)].filter(e => getComputedStyle(e).color === accent).length", new object[] { rail!, accent }) > 0, "the rail is not lit on the rod");
        await visit.ToView("Proof");
        await visit.Picture("36-balustrade-proof");
        await visit.ToView("Regulation");
        await Assertions.Expect(page.Locator(".clause.pass", new() { HasText = "handrail" }).First).ToBeVisibleAsync();
        await visit.Picture("36-balustrade-regulation");
        await visit.ToView("Sheets");
        await page.Locator(".sheets .thumb").First.WaitForAsync();
        await visit.Picture("36-balustrade-sheets");
        // Its fields stand together; a change of one makes other rails.
        await visit.Set("practice.railHeight", "950");
        await visit.Kept(2);
        await visit.ToView("Parts");
        await page.Locator("tr[data-of^=handrail] .mark").First.ClickAsync();
        await Assertions.Expect(page.Locator(".pick")).ToContainTextAsync("950 mm");
        visit.Quiet();
    }
}
