using System.IO.Compression;
using System.Text.Json;
using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

[Collection("workshop")]
public sealed class JobTests(Workshop workshop)
{
    private Task<Visit> Visit(string name = "Ada", int width = 1280, int height = 800) => Browser.Tests.Visit.Begin(workshop.Browser, workshop.Bench.Address, width, height, name: name);

    [Fact]
    public async Task From_a_blank_job_to_a_downloaded_pack()
    {
        await using var visit = await Visit();
        var page = visit.Page;
        await visit.ToShelf();
        await page.ClickAsync("#new-job");
        await page.FillAsync("#b-title", "Rookhope Cottage, stair to the attic");
        await page.FillAsync("#b-height", "2604, 2606");
        await page.FillAsync("#b-width", "880");
        await page.GetByLabel("three tapered steps near the head").CheckAsync();
        await page.GetByLabel("right", new() { Exact = true }).CheckAsync();
        await visit.Picture("01-new-job");
        await page.ClickAsync("#make");
        await visit.RodReady();
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("✓ Complies");
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("✓ Goes together");
        await visit.Picture("02-rod");
        await visit.Set("going", "231");
        await visit.Kept(2);
        await page.GetByRole(AriaRole.Link, new() { Name = "Sheets" }).ClickAsync();
        await page.Locator(".sheets li").First.WaitForAsync();
        await page.WaitForFunctionAsync("() => [...document.querySelectorAll('.sheets img')].slice(0, 4).every(i => i.complete && i.naturalWidth > 0)");
        await visit.Picture("10-sheets");
        var download = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("#pack"));
        Assert.Equal("rookhope-cottage-stair-to-the-attic.zip", download.SuggestedFilename);
        using var zip = ZipFile.OpenRead((await download.PathAsync())!);
        var names = zip.Entries.Select(e => e.FullName).ToHashSet();
        foreach (var wanted in new[] { "set.pdf", "true-size.pdf", "booklet.pdf", "job.stair.json", "result.json", "parts.csv", "stair.glb", "stair.step", "stair.ifc", "contents.csv" }) Assert.Contains(wanted, names);
        using var result = JsonDocument.Parse(zip.GetEntry("job.stair.json")!.Open());
        Assert.Equal(231, result.RootElement.GetProperty("going").GetDouble());
        visit.Quiet();
    }

    [Fact]
    public async Task Twenty_changes_are_undone_and_the_stair_is_as_it_was()
    {
        await using var visit = await Visit();
        await visit.Sample("Larkmoor");
        for (var i = 1; i <= 20; i++)
        {
            await visit.Set("going", $"{225 + i}");
            await visit.Kept(i + 1);
        }
        Assert.Equal("245", await visit.Value("going"));
        await visit.Page.Locator("#view").ClickAsync(new() { Position = new() { X = 300, Y = 500 } });
        for (var i = 1; i <= 20; i++)
        {
            await visit.Page.Keyboard.PressAsync("Control+z");
            await visit.Kept(21 + i);
            Assert.Equal($"{245 - i}", await visit.Value("going"));
        }
        Assert.True(await visit.Page.Locator("#undo").IsDisabledAsync());
        await visit.Page.Keyboard.PressAsync("Control+Shift+z");
        await visit.Kept(42);
        Assert.Equal("226", await visit.Value("going"));
        visit.Quiet();
    }

    [Fact]
    public async Task Of_two_people_at_one_job_the_second_is_told_and_chooses()
    {
        await using var ada = await Visit();
        await using var bert = await Visit("Bert");
        var address = await ada.Sample("Tern House");
        await bert.Page.GotoAsync(address);
        await bert.RodReady();
        await ada.Set("going", "240");
        await ada.Kept(2);
        await Assertions.Expect(bert.Page.Locator(".notice")).ToContainTextAsync("Ada has changed this job");
        await bert.Set("width", "910");
        await Assertions.Expect(bert.Page.Locator(".clash")).ToContainTextAsync("Ada");
        await Assertions.Expect(bert.Page.Locator(".clash")).ToContainTextAsync("235 to 240");
        await bert.Picture("13-two-people");
        await bert.Page.ClickAsync("#mine-on-top");
        await bert.Kept(3);
        Assert.Equal(("240", "910"), (await bert.Value("going"), await bert.Value("width")));
        await ada.Page.ClickAsync("#follow");
        await ada.Kept(3);
        Assert.Equal("910", await ada.Value("width"));
        ada.Quiet();
        bert.Quiet();
    }

    [Fact]
    public async Task What_is_typed_wrongly_is_told_beside_its_field_and_the_stair_stays()
    {
        await using var visit = await Visit();
        await visit.Sample("Larkmoor");
        await visit.Set("width", "two feet");
        await Assertions.Expect(visit.Page.Locator("[data-path=width] .refusal").First).ToContainTextAsync("two feet");
        await visit.Set("going", "9999");
        await Assertions.Expect(visit.Page.Locator("[data-path=going] .refusal").First).ToContainTextAsync("9999");
        await visit.Picture("06-refused");
        await visit.Set("going", "230");
        await visit.Kept(2);
        await Assertions.Expect(visit.Page.Locator("[data-path=going] .refusal")).ToHaveCountAsync(0);
        visit.Quiet();
    }

    [Fact]
    public async Task A_broken_rule_is_told_and_one_press_mends_it()
    {
        await using var visit = await Visit();
        await visit.Sample("Larkmoor");
        await visit.Set("going", "200");
        await visit.Kept(2);
        await Assertions.Expect(visit.Page.Locator(".verdict")).ToContainTextAsync("not kept");
        var breach = visit.Page.Locator(".finding.breach", new() { Has = visit.Page.Locator(".remedy") }).First;
        var code = await breach.Locator(".code").InnerTextAsync();
        await visit.Picture("05-breach");
        for (var i = 0; i < 6 && await visit.Page.Locator(".finding.breach").CountAsync() > 0; i++)
        {
            // Remedies are tried once the page is drawn: the click waits for them.
            await visit.Page.Locator(".finding.breach .remedy").First.ClickAsync();
            await visit.Kept(3 + i);
        }
        await Assertions.Expect(visit.Page.Locator(".verdict")).ToContainTextAsync("✓ Complies");
        await Assertions.Expect(visit.Page.Locator(".finding.breach", new() { HasText = code })).ToHaveCountAsync(0);
        visit.Quiet();
    }
}
