using System.IO.Compression;
using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

/// <summary>Each piece's file for the machine.</summary>
[Collection("workshop")]
public sealed class MachiningTests(Workshop workshop)
{
    [Fact]
    public async Task A_piece_is_chosen_its_layers_looked_at_and_its_file_taken()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await visit.ToView("Machining");
        await page.Locator("#piece-on").ClickAsync();
        await Assertions.Expect(page.Locator("#piece-title")).ToContainTextAsync("W2");
        await page.Locator(".layers .link", new() { HasText = "HOUSING-" }).First.ClickAsync();
        await Assertions.Expect(page.Locator(".layers tr.lit")).ToHaveCountAsync(1);
        await visit.Picture("37-machining");
        var dxf = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("#piece-dxf"));
        Assert.EndsWith("-w2.dxf", dxf.SuggestedFilename, StringComparison.Ordinal);
        Assert.Contains("HOUSING-", await File.ReadAllTextAsync(await dxf.PathAsync()), StringComparison.Ordinal);
        var all = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("#machining-zip"));
        using (var zip = await ZipFile.OpenReadAsync(await all.PathAsync()))
        {
            var files = zip.Entries.Select(e => e.Name).Where(n => n.EndsWith(".dxf", StringComparison.Ordinal)).ToList();
            Assert.Equal(await page.Locator("#machined option").CountAsync(), files.Count(f => !f.StartsWith("pair-", StringComparison.Ordinal) && !f.StartsWith("jig-", StringComparison.Ordinal)));
            // Two flights of two strings each, and a jig for treads and one for risers.
            Assert.Equal(["jig-riser.dxf", "jig-tread.dxf", "pair-F1-W1.dxf", "pair-F2-W2.dxf"], files.Where(f => f.Contains('-', StringComparison.Ordinal)).Order());
            Assert.Contains(zip.Entries, e => e.Name == "machining.csv");
        }
        await Assertions.Expect(page.Locator("#cutter-leaves")).ToContainTextAsync("With a cutter of 10 mm");
        visit.Quiet();
    }

    [Fact]
    public async Task On_a_dark_tablet_a_newel_is_picked_by_keys_and_nothing_breaks_a_rule_of_accessibility()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, 820, 1180, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Ferrow Croft");
        await page.GetByRole(AriaRole.Button, new() { Name = "Dark board" }).ClickAsync();
        await visit.ToView("Machining");
        await visit.Reach("#machined");
        await page.Keyboard.TypeAsync("N2");
        await Assertions.Expect(page.Locator("#piece-title")).ToContainTextAsync("N2");
        await visit.Picture("38-machining-tablet");
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), "wider than the tablet");
        await ViewsTests.Audit(visit, "machining");
        visit.Quiet();
    }
}
