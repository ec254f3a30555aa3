using Bunit;
using Rodwright.Pages.Machining;
using Rodwright.Rod.Machining;
using Rodwright.Workshop.Machining;

namespace Rodwright.Pages.Tests.Machining;

public sealed class MachiningPageTests
{
    [Fact]
    public async Task Every_mark_is_offered_and_the_one_picked_is_drawn_with_the_layers_of_its_file()
    {
        await using var bench = await WorkBench.Of("left-kite-low");
        var view = bench.Show<MachiningPage>();
        var kit = bench.Work.State.Stair!.Kit;
        Assert.Equal(kit.Parts.DistinctBy(p => p.Mark).Select(p => $"{p.Mark}, {p.Name}"), view.FindAll("#machined option").Select(b => b.TextContent));
        foreach (var part in kit.Parts.DistinctBy(p => p.Kind))
        {
            await view.Find("#machined").ChangeAsync(new() { Value = part.Id });
            Assert.Equal(part.Id, bench.Work.Pick!.Id);
            Assert.StartsWith(part.Mark, view.Find("#piece-title").TextContent, StringComparison.Ordinal);
            Assert.Equal(PartDxf.Of(part, kit, CutterCorners.Of(part, Rodwright.Stairs.Shops.ShopRouter.Usual(kit.Plan.Units).Cutter)).Layers.Select(l => l.Name), view.FindAll(".layers button").Select(b => b.TextContent));
            Assert.EndsWith($"/machining/{part.Mark}.dxf", view.Find("#piece-dxf").GetAttribute("href"), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Pieces_are_gone_through_one_by_one()
    {
        await using var bench = await WorkBench.Of("straight-flight");
        var view = bench.Show<MachiningPage>();
        var marks = bench.Work.State.Stair!.Kit.Parts.DistinctBy(p => p.Mark).ToList();
        Assert.True(view.Find("#piece-back").HasAttribute("disabled"));
        foreach (var part in marks.Skip(1))
        {
            await view.Find("#piece-on").ClickAsync(new());
            Assert.Equal(part.Id, bench.Work.Pick!.Id);
        }
        Assert.True(view.Find("#piece-on").HasAttribute("disabled"));
        await view.Find("#piece-back").ClickAsync(new());
        Assert.Equal(marks[^2].Id, bench.Work.Pick!.Id);
    }

    [Fact]
    public async Task A_layer_stands_out_when_it_is_pressed_and_falls_back_when_pressed_again()
    {
        await using var bench = await WorkBench.Of("left-kite-low");
        var view = bench.Show<MachiningPage>();
        var calm = view.Find(".piece-picture").InnerHtml;
        await view.FindAll(".layers button").First(b => b.TextContent.StartsWith("HOUSING", StringComparison.Ordinal)).ClickAsync(new());
        Assert.NotEqual(calm, view.Find(".piece-picture").InnerHtml);
        Assert.Single(view.FindAll(".layers tr.lit"));
        await view.Find(".layers tr.lit button").ClickAsync(new());
        Assert.Equal(calm, view.Find(".piece-picture").InnerHtml);
    }

    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("balustrade")]
    [InlineData("bull-nose")]
    [InlineData("feet-and-inches")]
    public async Task Every_layer_is_told_in_words_its_depth_with_it_and_all_of_the_picture_lies_on_its_paper(string sample)
    {
        await using var bench = await WorkBench.Of(sample);
        var kit = bench.Work.State.Stair!.Kit;
        foreach (var part in kit.Parts.DistinctBy(p => p.Mark))
        {
            var piece = MachinedPiece.Of(part, kit);
            Assert.All(piece.Layers, l => Assert.True(l.Words.Length > 0 && l.How.Length > 0, $"{part.Mark}: {l.Name}"));
            Assert.Equal(piece.Drawing.Entities.Length, piece.Layers.Sum(l => l.Count));
            foreach (var cut in part.Cuts.Where(c => c.Beneath == 0)) Assert.Contains(piece.Layers, l => Math.Abs(l.Depth - cut.Depth) < 1e-9 || cut.Kind == Rodwright.Joinery.Parts.CutKind.RoundedEdge);
            var picture = piece.Picture();
            Assert.All(picture.Marks.Where(m => m is not Rodwright.Drawings.Marks.TextMark), m => Assert.True(m.Bounds.MinX >= -0.01 && m.Bounds.MinY >= -0.01 && m.Bounds.MaxX <= picture.Width + 0.01 && m.Bounds.MaxY <= picture.Height + 0.01, part.Mark));
        }
    }
}
