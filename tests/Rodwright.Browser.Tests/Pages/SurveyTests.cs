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
        await visit.ToView("Survey");
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

    [Fact]
    public async Task A_button_stays_under_the_finger_when_the_press_takes_the_focus_from_a_reading_above_it()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        await page.SetViewportSizeAsync(1280, 2400);
        await visit.Sample("Larkmoor");
        await visit.ToView("Survey");
        var hint = page.Locator("#view #s-survey-floorToFloor-about");
        var below = page.Locator("#view #s-survey-tolerance");
        await below.FocusAsync();
        var folded = await Top();
        await page.Locator("#view #s-survey-floorToFloor").FocusAsync();
        var unfolded = await Top();
        Assert.True(unfolded > folded + 5, "the hint does not unfold");
        var box = (await below.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + 20, box.Y + 8);
        await page.Mouse.DownAsync();
        await page.WaitForTimeoutAsync(200);
        Assert.Equal(unfolded, await Top());
        await page.Mouse.UpAsync();
        await page.WaitForFunctionAsync("y => document.querySelector('#view #s-survey-tolerance').getBoundingClientRect().top < y - 5", unfolded);
        Assert.True(await hint.IsVisibleAsync());
        visit.Quiet();

        async Task<double> Top() => (await below.BoundingBoxAsync())!.Y;
    }
}
