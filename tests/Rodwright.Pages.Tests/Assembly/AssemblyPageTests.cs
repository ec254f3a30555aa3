using Bunit;
using Microsoft.AspNetCore.Components.Web;
using Rodwright.Pages.Assembly;
using Rodwright.Rod.Assembly;
using Rodwright.Workshop.Assembly;

namespace Rodwright.Pages.Tests.Assembly;

public sealed class AssemblyPageTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("balustrade")]
    public async Task Each_stage_is_shown_in_its_turn_with_its_picture_its_words_and_its_pieces(string sample)
    {
        await using var bench = await WorkBench.Of(sample);
        var view = bench.Show<AssemblyPage>();
        view.WaitForElement(".stage-picture .drawing", Patience);
        var stages = AssemblyOrder.Of(bench.Work.State.Stair!.Kit);
        Assert.Equal(stages.Length, view.FindAll(".stage-list button").Count);
        foreach (var (i, stage) in stages.Index())
        {
            Assert.StartsWith($"{i + 1}. {stage.Title}", view.Find("#stage-told").TextContent, StringComparison.Ordinal);
            Assert.Equal(stage.Words, view.Find(".stage-words > p").TextContent);
            Assert.Equal($"Stage {i + 1}: {stage.Title}", view.Find(".stage-picture .drawing").GetAttribute("aria-label"));
            Assert.Equal("step", view.FindAll(".stage-list button")[i].GetAttribute("aria-current"));
            var named = view.FindAll(".stage-words .chip").Select(c => c.GetAttribute("data-of")!).ToList();
            Assert.Subset(stage.New.Concat(stage.Moved).ToHashSet(), named.ToHashSet());
            if (i > 0) Assert.NotEmpty(named);
            if (i < stages.Length - 1) await view.Find("#stage-on").ClickAsync(new());
        }
        Assert.True(view.Find("#stage-on").HasAttribute("disabled"));
    }

    [Fact]
    public async Task Keys_walk_through_the_stages_and_a_piece_is_picked()
    {
        await using var bench = await WorkBench.Of("left-kite-low");
        var view = bench.Show<AssemblyPage>();
        view.WaitForElement(".stage-picture .drawing", Patience);
        await Key("ArrowRight");
        await Key("ArrowRight");
        await Key("ArrowLeft");
        Assert.StartsWith("2. ", view.Find("#stage-told").TextContent, StringComparison.Ordinal);
        await Key("Home");
        await Key("ArrowLeft");
        Assert.StartsWith("1. ", view.Find("#stage-told").TextContent, StringComparison.Ordinal);
        await Key("End");
        Assert.StartsWith($"{view.FindAll(".stage-list button").Count}. ", view.Find("#stage-told").TextContent, StringComparison.Ordinal);
        await view.Find(".stage-words .chip").ClickAsync(new());
        Assert.Equal(view.Find(".stage-words .chip").GetAttribute("data-of"), bench.Work.Pick!.Id);
        Assert.Equal("true", view.Find(".stage-words .chip").GetAttribute("aria-pressed"));

        Task Key(string key) => view.Find("section").KeyDownAsync(new KeyboardEventArgs { Key = key });
    }

    [Fact]
    public async Task Every_part_is_named_in_some_stage_but_for_those_that_share_a_mark()
    {
        await using var bench = await WorkBench.Of("balustrade");
        var made = AssemblyBench.Of(bench.Work.State.Stair!);
        Assert.Equal(bench.Work.State.Stair!.Kit.Parts.Select(p => p.Mark).Distinct().Order(), made.Stages.SelectMany(s => s.Parts).Select(p => p.Mark).Distinct().Order());
        Assert.All(made.Stages, s => Assert.NotEmpty(s.Picture.Marks));
    }
}
