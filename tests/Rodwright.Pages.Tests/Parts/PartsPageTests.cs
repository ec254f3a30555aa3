using Bunit;
using Rodwright.Joinery.Parts;
using Rodwright.Pages.Parts;

namespace Rodwright.Pages.Tests.Parts;

public sealed class PartsPageTests
{
    [Fact]
    public async Task Every_part_of_a_balustrade_is_listed_and_each_cut_says_where_it_is_and_how_deep()
    {
        await using var bench = await WorkBench.Of("balustrade");
        var view = bench.Show<PartsPage>();
        var kit = bench.Work.State.Stair!.Kit;
        Assert.Equal(kit.Parts.Select(p => p.Id), view.FindAll("tbody tr").Select(r => r.GetAttribute("data-of")!));
        var rail = kit.Parts.First(p => p.Kind == PartKind.Handrail);
        Assert.Contains(rail.Cuts, c => c.Beneath > 0 && CutLine.Of(kit, rail, c).Contains(" behind the face", StringComparison.Ordinal));
        var half = kit.Parts.First(p => p.Kind == PartKind.WallNewel);
        Assert.All(half.Cuts, c => Assert.Contains($", face {half.Faces[c.Face].Looks}", CutLine.Of(kit, half, c), StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_rail_picked_elsewhere_is_lit_with_its_cuts_open()
    {
        await using var bench = await WorkBench.Of("balustrade");
        var rail = bench.Work.State.Stair!.Kit.Parts.First(p => p.Kind == PartKind.Handrail);
        await bench.Work.Choose(rail.Id);
        var view = bench.Show<PartsPage>();
        Assert.True(view.Find($"tr.lit[data-of='{rail.Id}'] details").HasAttribute("open"));
        Assert.Contains(bench.Work.Pick!.Facts, f => f.Label.Contains("plumb above nosing", StringComparison.Ordinal));
    }
}
