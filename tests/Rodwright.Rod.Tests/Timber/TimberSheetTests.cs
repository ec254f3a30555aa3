using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Packs;
using Rodwright.Rod.Timber;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Timber;

public class TimberSheetTests
{
    [Theory]
    [MemberData(nameof(Sheets))]
    public void Nothing_overlaps_on_any_timber_sheet_of_any_sample(string name, string paper)
    {
        var (rod, plan) = Planned(name, paper);
        var sheets = TimberSheets.Make(rod, plan).Sheets.Concat(TimberSheets.Quotation(rod, plan).Sheets).ToList();
        foreach (var sheet in sheets) Assert.Equal([], SheetCheck.Overlaps(sheet).Select(f => $"{sheet.Name}: {f.Message}"));
        Assert.Single(TimberSheets.Quotation(rod, plan).Sheets);
        // Every piece that is cut is drawn on a board.
        var drawn = sheets.Where(s => s.Name.StartsWith("board-plan", StringComparison.Ordinal)).SelectMany(s => s.Marks).Select(m => m.Of).OfType<string>().ToHashSet();
        Assert.Empty(plan.List.Woods.Select(w => w.Wood.Part).Except(drawn));
    }

    public static TheoryData<string, string> Sheets
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var name in Samples.Names) data.Add(name, "A3");
            foreach (var name in (string[])["left-kite-low", "balanced-turn", "feet-and-inches"]) data.Add(name, "A4");
            return data;
        }
    }

    [Theory]
    [InlineData("a4-24")]
    [InlineData("a4-21")]
    [InlineData("a4-14")]
    [InlineData("letter-30")]
    public void Every_piece_has_a_label_that_leads_to_a_page_that_shows_it(string id)
    {
        var (rod, plan) = Planned("left-kite-low", "A3");
        var stock = LabelStock.Of(id)!;
        // Labels side by side do not touch, and all lie on the paper.
        Assert.True(stock.StepX >= stock.Width && stock.StepY >= stock.Height);
        Assert.True(stock.Left + (stock.Columns - 1) * stock.StepX + stock.Width <= stock.Paper.Width + 0.1 && stock.Top + (stock.Rows - 1) * stock.StepY + stock.Height <= stock.Paper.Height + 0.1);
        var set = Pack.Draw(rod).Set;
        var labels = LabelSheets.Make(rod, plan.List, stock, set);
        foreach (var sheet in labels.Sheets) Assert.Equal([], SheetCheck.Overlaps(sheet).Select(f => f.Message));
        Assert.Equal(rod.Stair.Kit.Parts.Select(p => p.Mark), labels.Sheets.SelectMany(s => s.Marks).OfType<TextMark>().Where(t => t.Bold).Select(t => t.Text));
        var pages = LabelSheets.PageOfParts(set, rod.Stair.Kit);
        Assert.All(rod.Stair.Kit.Parts, p => Assert.InRange(pages[p.Id], 1, set.Sheets.Length));
        // The page is about the piece: its kind's own, not the plan or the cover.
        Assert.All(rod.Stair.Kit.Parts, p => Assert.Contains(p.Kind switch { PartKind.Newel => "newel", PartKind.WallString or PartKind.NewelString => "string", PartKind.Riser or PartKind.TaperedRiser => "riser", PartKind.NosingPiece => "nosing", _ => "tread" },
            (set.Sheets[pages[p.Id] - 1].Title + set.Sheets[pages[p.Id] - 1].Name).ToLowerInvariant(), StringComparison.Ordinal));
        Assert.Equal($"https://bench.example/set.pdf#page={pages["tread-2"]}", LabelSheets.Code(set, pages, rod.Stair.Kit.Find("tread-2"), "https://bench.example/"));
    }

    [Fact]
    public void The_files_are_the_same_every_time()
    {
        var (rod, plan) = Planned("straight-flight", "A3");
        var (one, other) = (TimberFiles.Make(rod, plan), TimberFiles.Make(rod, plan));
        Assert.Equal(["timber.pdf", "quotation.pdf", "timber.xlsx", "cutting-list.csv", "board-plan.csv", "fixings.csv", "costing.csv"], one.Select(f => f.Name));
        // The letters a PDF names its fonts by are drawn by lot.
        Assert.All(one.Zip(other).Where(f => !f.First.Name.EndsWith(".pdf", StringComparison.Ordinal)), f => Assert.Equal(f.First.Bytes.ToArray(), f.Second.Bytes.ToArray()));
    }

    private static (RodJob Rod, BoardPlan Plan) Planned(string name, string paper)
    {
        var stair = Stair.SetOut(Samples.Job(name)).Value!;
        Assert.True(PaperStock.TryParse(paper, out var stock, out _));
        var shop = UsualShop.For(stair.Job);
        return (new(stair, stair.Prove(), new(stock, null, "2026-03-02")), BoardPlan.Of(CuttingList.Of(stair.Kit, shop)));
    }
}
