using Bunit;
using Rodwright.Pages.Shell;
using Rodwright.Pages.Survey;
using Rodwright.Pages.Work;
using Rodwright.Testing;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Pages.Tests.Survey;

public sealed class SurveyPageTests
{
    private const string Wall = "details[data-add='survey.walls']";

    [Fact]
    public async Task A_room_grows_reading_by_reading_and_what_disagrees_is_refused_beneath_it_and_marked_on_the_picture()
    {
        using var page = new BunitContext();
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        using var work = await Open(page);
        var view = page.Render<SurveyPage>(p => p.AddCascadingValue(work));
        work.Changed += () => view.Render();
        Assert.Empty(view.FindAll("[data-thing='survey.walls[0]']"));
        view.Find($"{Wall} input").Change("3742");
        await view.Find($"{Wall} button").ClickAsync(new());
        Assert.Equal(3742, work.State.Job.Survey.Walls[0].Length.Mean);
        Assert.Equal(2, work.Session.Card.Revision);
        Assert.Equal("Add the corner at the end of wall 1", view.Find("details[data-add='survey.walls[0].corner'] summary").TextContent);
        var length = view.Find("[data-path='survey.walls[0].length'] input");
        await length.ChangeAsync(new() { Value = "3742, 3790" });
        Assert.Contains("48 mm apart", view.Find("[data-path='survey.walls[0].length'] .refusal").TextContent, StringComparison.Ordinal);
        Assert.Equal(3742, work.State.Job.Survey.Walls[0].Length.Mean);
        var marked = view.Find(".picture").InnerHtml;
        await view.Find("[data-path='survey.walls[0].length'] input").ChangeAsync(new() { Value = "3742, 3744" });
        Assert.Empty(view.FindAll(".refusal"));
        Assert.NotEqual(marked, view.Find(".picture").InnerHtml);
        await work.Undo();
        await work.Undo();
        Assert.Empty(work.State.Job.Survey.Walls);
    }

    [Fact]
    public async Task A_wall_without_a_length_is_refused_and_nothing_is_made_up_for_it()
    {
        using var page = new BunitContext();
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        using var work = await Open(page);
        var view = page.Render<SurveyPage>(p => p.AddCascadingValue(work));
        work.Changed += () => view.Render();
        await view.Find($"{Wall} button").ClickAsync(new());
        Assert.NotEmpty(view.FindAll(".refusal"));
        Assert.Empty(work.State.Job.Survey.Walls);
    }

    [Fact]
    public async Task A_well_brings_the_headroom_and_how_sure_it_is()
    {
        using var page = new BunitContext();
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        using var work = await Open(page);
        var view = page.Render<SurveyPage>(p => p.AddCascadingValue(work));
        work.Changed += () => view.Render();
        Assert.Contains("nothing over the stair was measured", view.Find(".follows").TextContent, StringComparison.Ordinal);
        foreach (var (field, value) in new[] { ("length", "2455"), ("width", "2020"), ("trimmer", "232") }) view.Find($"#add-survey-well-{field}").Change(value);
        await view.Find("details[data-add='survey.well'] button").ClickAsync(new());
        Assert.Contains("mm at the least", view.Find(".follows").TextContent, StringComparison.Ordinal);
        Assert.Matches("(Safe to cut|Measure again|whatever the tape says).*eadroom", view.Find(".certain").TextContent);
    }

    private static async Task<WorkModel> Open(BunitContext page)
    {
        var shelf = new MemoryShelf(TimeProvider.System);
        var card = await shelf.Add(ShelfDrafts.Made(Samples.Job("left-kite-low"), "made", "Ada"));
        return new((await JobSession.Open(shelf, new(), card.Id, () => "Ada"))!, new PageScript(page.JSInterop.JSRuntime));
    }
}
