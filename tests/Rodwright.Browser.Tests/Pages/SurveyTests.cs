using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

/// <summary>A room entered reading by reading.</summary>
[Collection("workshop")]
public sealed class SurveyTests(Workshop workshop)
{
    [Fact]
    public async Task A_room_is_measured_reading_by_reading_a_disagreement_is_told_and_headroom_and_certainty_follow()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        page.SetDefaultTimeout(12_000);
        await visit.Sample("Larkmoor");
        await page.GetByRole(AriaRole.Link, new() { Name = "Survey", Exact = true }).ClickAsync();
        await Add("survey.walls", ("length", "3742"));
        await visit.Kept(2);
        await Add("survey.walls", ("length", "2380"));
        await visit.Kept(3);
        await Add("survey.well", ("length", "2455"), ("width", "2020"), ("trimmer", "232"));
        await visit.Kept(4);
        await Assertions.Expect(page.Locator(".follows")).ToContainTextAsync("mm at the least");
        await Assertions.Expect(page.Locator(".certain li").First).ToContainTextAsync(":");
        var length = page.Locator("#view [data-path='survey.walls[0].length'] input");
        await length.FillAsync("3742, 3790");
        await length.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#view .refusal")).ToContainTextAsync("48 mm apart");
        await visit.Picture("20-survey");
        await length.FillAsync("3742, 3744");
        await length.PressAsync("Enter");
        await visit.Kept(5);
        await Assertions.Expect(page.Locator("#view .refusal")).ToHaveCountAsync(0);
        visit.Quiet();

        async Task Add(string path, params (string Field, string Value)[] readings)
        {
            var add = page.Locator($"details[data-add='{path}']");
            if (!await add.GetByRole(AriaRole.Button).IsVisibleAsync()) await add.Locator("summary").ClickAsync();
            foreach (var (field, value) in readings) await add.Locator($"#add-{path.Replace('.', '-')}-{field}").FillAsync(value);
            await add.GetByRole(AriaRole.Button).ClickAsync();
        }
    }
}
