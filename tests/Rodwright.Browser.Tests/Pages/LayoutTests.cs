using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

[Collection("workshop")]
public sealed class LayoutTests(Workshop workshop)
{
    [Fact]
    public async Task A_straight_stair_is_made_into_one_with_two_turns_to_both_hands_by_keyboard_alone()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var page = visit.Page;
        await visit.Sample("Tern House");
        await Press("turn with tapered steps");
        await Assertions.Expect(page.GetByRole(AriaRole.Group, new() { Name = "turn", Exact = true })).ToBeVisibleAsync();
        await Assertions.Expect(Row("Steps after the turn")).ToHaveTextAsync("7");
        await visit.Kept(2);
        await Press("a turn in the upper flight");
        await Assertions.Expect(page.GetByRole(AriaRole.Group, new() { Name = "second turn", Exact = true })).ToBeVisibleAsync();
        await Assertions.Expect(Row("Steps of the third flight")).ToHaveTextAsync("2");
        await visit.Kept(3);

        var second = page.GetByRole(AriaRole.Group, new() { Name = "second turn", Exact = true });
        var right = second.GetByRole(AriaRole.Button, new() { Name = "to the right" });
        await right.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(right).ToHaveAttributeAsync("aria-pressed", "true");
        await visit.Kept(4);
        await Press("Second turn along the stair: fewer");
        await Assertions.Expect(Row("Steps of the second flight")).ToHaveTextAsync("1");
        await visit.Kept(5);

        await Assertions.Expect(page.Locator(".handle[data-handle=newel-turn-1]")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".handle[data-handle=newel-turn-2]")).ToHaveCountAsync(1);
        await visit.Picture("20-two-turns");
        await Press("without the first turn");
        await Assertions.Expect(Row("Steps before the turn")).ToHaveTextAsync("6");
        await Assertions.Expect(page.Locator(".handle[data-handle=newel-turn]")).ToHaveCountAsync(1);
        visit.Quiet();

        ILocator Row(string name) => page.GetByRole(AriaRole.Group, new() { Name = name, Exact = true }).Locator("output");

        async Task Press(string name)
        {
            var button = page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });
            await button.FocusAsync();
            await page.Keyboard.PressAsync("Enter");
        }
    }
}
