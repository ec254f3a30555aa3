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
        await page.Locator("#add-survey-walls-length").FocusAsync();
        await Assertions.Expect(Board(page, "tape").First).ToBeVisibleAsync();
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
        await Assertions.Expect(Board(page, "disagrees", "text")).ToContainTextAsync("3742, 3790: 48 apart");
        await visit.Picture("21-survey");
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
    public async Task What_is_pressed_on_the_picture_takes_the_reading_in_hand_and_a_well_may_have_any_corners()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Curlew House");
        await visit.ToView("Survey");
        await Press(page, "survey.walls[1].length", 0.5, 0.2);
        await Assertions.Expect(page.Locator("#view [data-path='survey.walls[1].length'] input")).ToBeFocusedAsync();
        await Assertions.Expect(Board(page, "tape").First).ToBeVisibleAsync();
        await page.Locator("#view [data-path='survey.well.trimmer'] input").FocusAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Section", Exact = true })).ToHaveAttributeAsync("aria-pressed", "true");
        await Assertions.Expect(Board(page, "least", "text")).ToContainTextAsync("least headroom 1818");
        await visit.Picture("22-survey-section");
        await page.GetByRole(AriaRole.Button, new() { Name = "Give it by its corners" }).ClickAsync();
        await visit.Kept(2);
        await Assertions.Expect(page.Locator(".corner-row")).ToHaveCountAsync(4);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a corner" }).ClickAsync();
        await visit.Kept(3);
        await page.GetByLabel("Corner 5, along").FillAsync("1100");
        await page.GetByLabel("Corner 5, along").PressAsync("Enter");
        await visit.Kept(4);
        await Assertions.Expect(page.Locator(".survey-board")).ToContainTextAsync("well of 5 corners");
        await page.GetByLabel("Corner 5, along").FillAsync("9000");
        await page.GetByLabel("Corner 5, along").PressAsync("Enter");
        await Assertions.Expect(page.Locator("#view .refusal")).ToContainTextAsync("cross one another");
        await page.GetByLabel("Remove corner 5").ClickAsync();
        await visit.Kept(5);
        await Assertions.Expect(page.Locator("#view .refusal")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".corner-row")).ToHaveCountAsync(4);
        visit.Quiet();
    }

    [Fact]
    public async Task In_the_round_the_place_of_least_headroom_is_marked_with_its_measure_and_what_it_is_under()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Curlew House");
        await visit.ToView("In the round");
        await page.Locator(".solid[data-state=ready]").WaitForAsync();
        var words = page.Locator("[data-solid=least-words]");
        await Assertions.Expect(words).ToHaveTextAsync("headroom 1818 mm, step 12, under roof slope");
        await Assertions.Expect(words).ToBeVisibleAsync();
        await page.WaitForTimeoutAsync(800);
        await visit.Picture("24-headroom-in-the-round");
        var (label, view) = ((await words.BoundingBoxAsync())!, (await page.Locator(".solid-view").BoundingBoxAsync())!);
        Assert.True(label.X >= view.X && label.X + label.Width <= view.X + view.Width && label.Y >= view.Y && label.Y + label.Height <= view.Y + view.Height, "the words lie outside the picture");
        await ViewsTests.Audit(visit, "headroom in the round");
        var button = page.GetByRole(AriaRole.Button, new() { Name = "Headroom", Exact = true });
        await button.ClickAsync();
        await Assertions.Expect(words).ToBeHiddenAsync();
        await Assertions.Expect(button).ToHaveAttributeAsync("aria-pressed", "false");
        await page.Locator(".solid-canvas").PressAsync("h");
        await Assertions.Expect(words).ToBeVisibleAsync();
        visit.Quiet();
    }

    [Fact]
    public async Task On_a_tablet_held_upright_and_on_the_dark_board_the_field_at_hand_stays_below_the_picture_and_no_rule_of_accessibility_is_broken()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, 800, 1280, touch: true, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Curlew House");
        await visit.ToView("Survey");
        var across = page.Locator("#view [data-path='survey.walls[0].corner.across'] input");
        await page.Locator("#view [data-path='survey.place.gap'] input").FocusAsync();
        await across.FocusAsync();
        await Assertions.Expect(Board(page, "tape").First).ToBeVisibleAsync();
        var (field, board) = ((await across.BoundingBoxAsync())!, (await page.Locator(".survey-board").BoundingBoxAsync())!);
        Assert.True(field.Y >= board.Y + board.Height, "the picture hides the field at hand");
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth && document.querySelector('#view').scrollWidth <= document.querySelector('#view').clientWidth"), "it must be scrolled sideways");
        Assert.Equal(0, await page.EvaluateAsync<int>("() => [...document.querySelectorAll('#view :is(button, summary, input, select)')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 44).length"));
        await visit.Picture("23-survey-on-a-tablet");
        await page.GetByRole(AriaRole.Button, new() { Name = "Dark board" }).ClickAsync();
        await page.WaitForFunctionAsync("() => document.documentElement.dataset.ground === 'dark'");
        await ViewsTests.Audit(visit, "survey on the dark board");
    }

    [Fact]
    public async Task A_room_is_measured_by_the_keyboard_alone()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await visit.ToView("Survey");
        await visit.Reach("#view details[data-add='survey.walls'] > summary");
        await page.Keyboard.PressAsync("Enter");
        await visit.Reach("#add-survey-walls-length");
        await Assertions.Expect(Board(page, "tape").First).ToBeVisibleAsync();
        await page.Keyboard.TypeAsync("3742");
        await visit.Reach("#view details[data-add='survey.walls'] button");
        await page.Keyboard.PressAsync("Enter");
        await visit.Kept(2);
        await visit.Reach("#view details[data-add='survey.walls[0].corner'] > summary");
        await page.Keyboard.PressAsync("Enter");
        foreach (var (field, value) in new[] { ("leg", "600"), ("nextLeg", "800"), ("across", "1001") })
        {
            await visit.Reach($"#add-survey-walls-0--corner-{field}");
            await page.Keyboard.TypeAsync(value);
        }
        await visit.Reach("#view details[data-add='survey.walls[0].corner'] button");
        await page.Keyboard.PressAsync("Enter");
        await visit.Kept(3);
        await Assertions.Expect(page.Locator(".survey-board")).ToContainTextAsync("90.1°");
        visit.Quiet();
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

    /// <summary>Marks of one thing on the picture.</summary>
    private static ILocator Board(IPage page, string of, string element = "path") => page.Locator($".survey-board {element}[data-of={of}]");

    /// <summary>Presses an area of the picture, so far along and down its box.</summary>
    private static async Task Press(IPage page, string path, double along, double down)
    {
        var box = (await page.Locator($".survey-board .hit[data-of='{path}']").BoundingBoxAsync())!;
        await page.Mouse.ClickAsync((float)(box.X + along * box.Width), (float)(box.Y + down * box.Height));
    }
}
