using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

[Collection("workshop")]
public sealed class RodTests(Workshop workshop)
{
    private Task<Visit> Begin(int width = 1280, int height = 800) => Visit.Begin(workshop.Browser, workshop.Bench.Address, width, height, name: "Ada");

    [Fact]
    public async Task The_rod_is_walked_from_bare_board_to_finished_line_by_line()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await page.ClickAsync("#stages");
        await Assertions.Expect(page.Locator(".stage-words")).ToContainTextAsync("The bare board");
        var slider = page.Locator("#stage");
        var count = int.Parse((await slider.GetAttributeAsync("max"))!, null);
        Assert.True(count > 100, $"{count} lines");
        await Assertions.Expect(page.Locator("[data-line]")).ToHaveCountAsync(count);
        await slider.FocusAsync();
        for (var i = 1; i <= 12; i++)
        {
            await page.Keyboard.PressAsync("ArrowRight");
            await Assertions.Expect(page.Locator($"[data-line='{i}'].fresh")).ToHaveCountAsync(1);
            await Assertions.Expect(page.Locator(".stage-words p").First).ToContainTextAsync("easure");
        }
        await Shown(12);
        foreach (var at in new[] { count / 3, 2 * count / 3, count })
        {
            await slider.FillAsync(at.ToString(null, null));
            await Shown(at);
            if (at == count / 3) await visit.Picture("04-line-by-line");
        }
        await page.ClickAsync("#stages");
        await Assertions.Expect(page.Locator("[data-line]")).ToHaveCountAsync(0);
        visit.Quiet();

        async Task Shown(int n)
        {
            await Assertions.Expect(page.Locator($"[data-line='{n}'].fresh")).ToHaveCountAsync(1);
            await Assertions.Expect(page.Locator("[data-line]:not(.ahead)")).ToHaveCountAsync(n);
        }
    }

    [Fact]
    public async Task A_mortice_picked_lights_up_on_plan_string_newel_face_parts_list_and_in_the_round()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await page.GetByRole(AriaRole.Link, new() { Name = "Parts", Exact = true }).ClickAsync();
        var row = page.Locator("tr[data-of='newel-turn']");
        await row.Locator("summary").ClickAsync();
        await row.GetByRole(AriaRole.Button, new() { Name = "mortice" }).First.ClickAsync();
        await Assertions.Expect(page.Locator(".pick h2")).ToContainTextAsync("ortice");
        var id = await page.Locator(".pick").GetAttributeAsync("data-picked");
        Assert.StartsWith("newel-turn/", id);
        await Assertions.Expect(row.Locator($"[data-of='{id}'].lit")).ToHaveCountAsync(1);
        var accent = await page.EvaluateAsync<string>("() => getComputedStyle(document.querySelector('.views a[aria-current]')).borderBottomColor");
        await page.GetByRole(AriaRole.Link, new() { Name = "Rod", Exact = true }).ClickAsync();
        await visit.RodReady();
        foreach (var kind in new[] { "plan", "newel-turn", "string" })
        {
            var lit = await page.EvaluateAsync<int>(
                "([kind, accent]) => [...document.querySelectorAll(`[data-piece*='${kind}'] [data-of]`)].filter(e => getComputedStyle(e).color === accent).length", new object[] { kind, accent });
            Assert.True(lit > 0, $"nothing lit on {kind}");
        }
        await page.Locator("#jump").SelectOptionAsync("newel-turn");
        await page.WaitForTimeoutAsync(400);
        await visit.Picture("03-picked");
        Assert.True(await page.Locator(".fact").CountAsync() >= 3);
        await page.GetByRole(AriaRole.Link, new() { Name = "In the round" }).ClickAsync();
        await page.Locator("canvas").WaitForAsync();
        await page.WaitForTimeoutAsync(2500);
        await visit.Picture("07-picked-in-the-round");
        visit.Quiet();
    }

    [Fact]
    public async Task Tapping_the_rod_picks_what_lies_under_the_finger()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await page.Locator("#jump").SelectOptionAsync("plan");
        await page.WaitForTimeoutAsync(300);
        var box = await page.Locator("[data-piece=plan] [data-of=newel-turn]").First.BoundingBoxAsync();
        await page.Mouse.ClickAsync(box!.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Locator(".pick").WaitForAsync();
        Assert.StartsWith("newel-turn", await page.Locator(".pick").GetAttributeAsync("data-picked"));
        visit.Quiet();
    }

    [Fact]
    public async Task The_scale_bar_tells_the_truth_at_any_magnification()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Tern House");
        for (var i = 0; i < 12; i++)
        {
            // The plan's piece is drawn at the board's scale: its height on the screen over the bar's length is its height in timber over what the bar says.
            var error = await page.EvaluateAsync<double>("""
                () => {
                    const sheet = document.querySelector('.sheet');
                    const ratio = Number(sheet.dataset.ratio);
                    const box = document.querySelector('[data-piece=plan]').dataset.box.split(' ').map(Number);
                    const pixelsPerMm = sheet.getBoundingClientRect().width / Number(sheet.getAttribute('viewBox').split(' ')[2]) / ratio;
                    const bar = document.querySelector('.bar').getBoundingClientRect().width;
                    return bar / pixelsPerMm - Number.parseFloat(document.querySelector('.bar-words').textContent);
                }
                """);
            var said = double.Parse((await page.Locator(".bar-words").InnerTextAsync()).Split(' ')[0], null);
            Assert.InRange(error / said, -0.01, 0.01);
            await page.ClickAsync("[aria-label=Closer]");
            await page.WaitForTimeoutAsync(60);
        }
        visit.Quiet();
    }

    [Fact]
    public async Task The_turn_is_dragged_along_the_stair_and_the_steps_follow()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await page.Locator("#jump").SelectOptionAsync("plan");
        await page.WaitForTimeoutAsync(300);
        var handle = page.Locator(".handle[data-handle=newel-turn] .grip");
        var along = (await page.Locator(".handle[data-handle=newel-turn]").GetAttributeAsync("data-along"))!.Split(' ').Select(double.Parse).ToArray();
        var mmToPixels = await page.EvaluateAsync<double>("() => { const s = document.querySelector('.sheet'); return s.getBoundingClientRect().width / Number(s.getAttribute('viewBox').split(' ')[2]) / Number(s.dataset.ratio); }");
        var box = (await handle.BoundingBoxAsync())!;
        var (x, y) = (box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        for (var i = 1; i <= 10; i++) await page.Mouse.MoveAsync((float)(x + along[0] * 240 * mmToPixels * i / 10), (float)(y - along[1] * 240 * mmToPixels * i / 10));
        await page.Mouse.UpAsync();
        await visit.Kept(2);
        var before = page.Locator(".edit-row", new() { HasText = "Steps before the turn" }).Locator("output");
        Assert.Equal("3", await before.InnerTextAsync());
        visit.Quiet();
    }

    [Fact]
    public async Task A_tablet_held_upright_shows_rod_sizes_and_findings_and_takes_touches()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, 800, 1280, touch: true, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Nettlefold");
        Assert.False(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > innerWidth"), "the page is wider than the tablet");
        var small = await page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('button, select, input, summary, nav a')].filter(e => e.checkVisibility() && e.type !== 'radio')
                .filter(e => { const r = e.getBoundingClientRect(); return r.width > 0 && (r.height < 43.5 || r.width < 43.5); }).map(e => e.outerHTML.slice(0, 120))
            """);
        Assert.Empty(small);
        await visit.Picture("11-tablet");
        var rod = (await page.Locator(".rod").BoundingBoxAsync())!;
        Assert.True(rod is { Width: > 700, Height: > 400 }, $"{rod.Width} x {rod.Height}");
        await page.Touchscreen.TapAsync(rod.X + rod.Width / 2, rod.Y + rod.Height / 2);
        await page.Locator("#jump").SelectOptionAsync("plan");
        await page.WaitForTimeoutAsync(300);
        var box = (await page.Locator("[data-piece=plan] [data-of=newel-turn]").First.BoundingBoxAsync())!;
        await page.Touchscreen.TapAsync(box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Locator(".pick").WaitForAsync();
        visit.Quiet();
    }

    [Fact]
    public async Task Mirror_and_half_scale_are_one_press_each()
    {
        await using var visit = await Begin();
        var page = visit.Page;
        await visit.Sample("Larkmoor");
        await page.ClickAsync("#mirror");
        await visit.Kept(2);
        await Assertions.Expect(page.Locator("[data-path='layout.hand'] select")).ToHaveValueAsync("right");
        await Assertions.Expect(page.Locator(".verdict")).ToContainTextAsync("✓ Goes together");
        await page.GetByText("Job", new() { Exact = true }).First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "half-scale model" }).ClickAsync();
        await visit.Kept(3);
        Assert.Equal("112.5", await visit.Value("going"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Paper" }).ClickAsync();
        await Assertions.Expect(page.Locator("dialog[open] tbody tr").First).ToContainTextAsync("A4");
        visit.Quiet();
    }

    [Fact]
    public async Task On_the_dark_board_the_lines_are_light()
    {
        await using var visit = await Begin();
        await visit.Sample("Ferrybank");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Dark board" }).ClickAsync();
        await visit.Page.WaitForFunctionAsync("() => document.documentElement.dataset.ground === 'dark'");
        var (ink, paper) = (await Light(".sheet", "color"), await Light(".sheet", "backgroundColor"));
        Assert.True(ink > paper + 120, $"{ink} on {paper}");
        await visit.Picture("12-dark-board");
        visit.Quiet();

        Task<double> Light(string selector, string property) => visit.Page.EvaluateAsync<double>(
            "([s, p]) => getComputedStyle(document.querySelector(s))[p].match(/\\d+/g).slice(0, 3).reduce((a, b) => a + Number(b), 0) / 3", new[] { selector, property });
    }
}
