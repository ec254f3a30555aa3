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

    [Fact]
    public async Task A_job_in_inches_is_measured_and_told_in_feet_and_inches()
    {
        using var page = new BunitContext();
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        using var work = await Open(page, "feet-and-inches");
        var view = page.Render<SurveyPage>(p => p.AddCascadingValue(work));
        work.Changed += () => view.Render();
        Assert.Equal("8' 11 1/4, 8' 11 3/16", view.Find("[data-path='survey.floorToFloor'] input").GetAttribute("value"));
        Assert.All(view.FindAll(".unit"), u => Assert.DoesNotContain("mm", u.TextContent, StringComparison.Ordinal));
        view.Find($"{Wall} input").Change("14' 2 1/2");
        await view.Find($"{Wall} button").ClickAsync(new());
        Assert.Equal(170.5 * 25.4, work.State.Job.Survey.Walls[0].Length.Mean);
        await view.Find("[data-path='survey.walls[0].length'] input").ChangeAsync(new() { Value = "14' 2 1/2, 14' 4 1/2" });
        Assert.Contains("2\" apart", view.Find("[data-path='survey.walls[0].length'] .refusal").TextContent, StringComparison.Ordinal);
        await view.Find("[data-path='survey.walls[0].length'] input").ChangeAsync(new() { Value = "14' 2 1/2, 14' 2 5/8" });
        Assert.Contains("Headroom ", view.Find(".follows").TextContent, StringComparison.Ordinal);
        Assert.Contains("\"", view.Find(".follows").TextContent, StringComparison.Ordinal);
        Assert.Contains("\"", view.Find(".certain").TextContent, StringComparison.Ordinal);
        // The unit's own field is not of this page: nothing here speaks of millimetres.
        Assert.DoesNotMatch(@"\bmm\b", view.Find("section").TextContent);
        foreach (var chip in view.FindAll(".survey-tools button")) Assert.DoesNotMatch(@"\bmm\b", chip.TextContent);
        await view.FindAll(".survey-tools button")[1].ClickAsync(new());
        Assert.Contains("8' 11", view.Find(".picture").TextContent, StringComparison.Ordinal);
    }

    private static async Task<WorkModel> Open(BunitContext page, string sample = "left-kite-low")
    {
        var shelf = new MemoryShelf(TimeProvider.System);
        var card = await shelf.Add(ShelfDrafts.Made(Samples.Job(sample), "made", "Ada"));
        return new((await JobSession.Open(shelf, new(), card.Id, () => "Ada"))!, new PageScript(page.JSInterop.JSRuntime));
    }
}
