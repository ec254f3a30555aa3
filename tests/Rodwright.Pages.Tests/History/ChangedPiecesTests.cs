using Bunit;
using Rodwright.Geometry;
using Rodwright.Pages.History;
using Rodwright.Rod.Revisions;

namespace Rodwright.Pages.Tests.History;

public sealed class ChangedPiecesTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private static readonly StairChanges Some = new(
        [
            new("tread-2", "T2", "tread 2", ChangeKind.Changed, [new("length of the board", "828", "868", 40, "868 instead of 828: 40 more"), new("housing of riser 2", "", "", -12.5, "moved 12.5 along the board") { IsCut = true }, new("bore", "", "", null, "new") { IsCut = true }]),
            new("tread-9", "T9", "tread 9", ChangeKind.Added, []), new("peg-4", "G4", "peg 4", ChangeKind.Removed, []),
        ],
        71, [new("set", "plan", "Plan", 2, ChangeKind.Changed), new("true-size", "w1", "W1", 1, ChangeKind.Added), new("set", "old", "Old", 9, ChangeKind.Removed)], 12);

    [Fact]
    public void Each_piece_stands_with_what_becomes_of_it_and_by_how_much_and_each_sheet_with_what_to_do()
    {
        using var page = new BunitContext();
        var view = page.Render<ChangedPieces>(p => p.Add(c => c.Changes, Some));
        var rows = view.FindAll(".pieces tbody tr");
        Assert.Equal(["make or alter", "make it", "no longer needed"], rows.Select(r => r.Children[2].TextContent));
        Assert.Contains("length of the board: 868 instead of 828: 40 more", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Equal("2 cuts, by up to 12.5 mm", view.Find(".pieces summary").TextContent);
        Assert.Equal(2, view.FindAll(".pieces li").Count);
        Assert.Contains("1 changed, 1 to make, 1 no longer needed; 71 unchanged.", view.Markup, StringComparison.Ordinal);
        Assert.Equal(["Print again Plan", "Print true size: W1", "Take out Old"], view.FindAll(".sheets-again li").Select(l => l.TextContent));
        Assert.Contains("12 can stay", view.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_that_is_there_is_picked_one_that_is_gone_is_not()
    {
        using var page = new BunitContext();
        var picked = "";
        var view = page.Render<ChangedPieces>(p => p.Add(c => c.Changes, Some).Add(c => c.OnPick, id => picked = id));
        Assert.Equal(["tread-2", "tread-9"], view.FindAll(".pieces .mark").Select(m => m.GetAttribute("data-of")));
        view.Find(".pieces .mark").Click();
        Assert.Equal("tread-2", picked);
    }

    [Fact]
    public void What_is_told_while_it_works_where_nothing_changed_and_where_a_stair_is_missing()
    {
        using var page = new BunitContext();
        Assert.Contains("Comparing", page.Render<ChangedPieces>(p => p.Add(c => c.Working, true)).Markup, StringComparison.Ordinal);
        Assert.Contains("no stair", page.Render<ChangedPieces>().Markup, StringComparison.Ordinal);
        var none = page.Render<ChangedPieces>(p => p.Add(c => c.Changes, new([], 74, [], 15)));
        Assert.Contains("Every piece is what it was", none.Markup, StringComparison.Ordinal);
        Assert.Contains("every sheet shows what it did", none.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Feet_and_inches_are_told_as_such()
    {
        using var page = new BunitContext();
        Assert.Equal("2 cuts, by up to " + Units.Inches.With(12.5, 2), page.Render<ChangedPieces>(p => p.Add(c => c.Changes, Some).Add(c => c.Units, Units.Inches)).Find(".pieces summary").TextContent);
    }

    [Fact]
    public async Task A_revision_is_compared_with_now_and_the_newest_with_itself_is_the_same()
    {
        await using var bench = await WorkBench.Of("straight-flight");
        await bench.Work.Take(bench.Work.State.Job with { Width = bench.Work.State.Job.Width + 40 }, "wider");
        var view = bench.Show<HistoryPage>();
        await view.Find("[aria-label='Compare revision 1 with now']").ClickAsync(new());
        var row = view.WaitForElement(".pieces tr[data-piece=tread-2]", Patience);
        Assert.Contains("40 more", row.TextContent, StringComparison.Ordinal);
        await view.Find("[aria-label='Compare revision 2 with now']").ClickAsync(new());
        Assert.Contains("The same job as now", view.Find(".compared").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Comparing", view.Find(".compared").TextContent, StringComparison.Ordinal);
    }
}
