using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Joinery;
using Rodwright.Rod.Sheets;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Regulations.Own;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Sheets;

public sealed class CoverTests
{
    private static string Words(IEnumerable<Sheet> sheets) =>
        string.Join(' ', sheets.SelectMany(s => FlatMarks.Of(s.Marks)).Select(m => m.Mark).OfType<TextMark>().Select(t => t.Text));

    [Theory, InlineData("A4"), InlineData("A3"), InlineData("A1")]
    public void Every_clause_finding_and_sheet_is_on_the_cover(string paper)
    {
        foreach (var name in Samples.Names)
        {
            var rod = Rods.Sample(name, paper);
            var others = StairSheets.Make(rod);
            var cover = Cover.Make(rod, others);
            var words = Words(cover);
            var rows = FlatMarks.Of(cover.SelectMany(s => s.Marks)).Select(m => m.Mark).OfType<TextMark>().Count(t => t.Text is "pass" or "FAIL" or "advice" or "not checked");
            Assert.True(rows >= rod.Stair.Regulation.Checks.Length, $"{name}: {rows} of {rod.Stair.Regulation.Checks.Length} clauses");
            foreach (var finding in rod.Stair.Findings) Assert.Contains(string.Join(' ', finding.Message.Split(' ')[^4..]).TrimEnd('.'), words, StringComparison.Ordinal);
            foreach (var sheet in others) Assert.Contains(sheet.Title, words, StringComparison.Ordinal);
            Assert.Contains("last word is the local authority's", words, StringComparison.Ordinal);
        }
    }

    [Theory, InlineData("A4"), InlineData("A3")]
    public void Under_every_table_each_number_from_memory_is_marked_on_the_sheet_and_nothing_overlaps(string paper)
    {
        foreach (var table in RegulationCatalogue.All)
        {
            var rod = Rods.Of(Samples.Job("left-kite-low") with { Regulation = table.Id }, paper);
            var cover = Cover.Make(rod, StairSheets.Make(rod));
            var memory = rod.Stair.Regulation.FromMemory;
            var marked = Words(cover).Split("not checked against the document").Length - 1;
            Assert.True(marked >= memory, $"{table.Id}: {marked} marks for {memory} numbers");
            if (memory > 0) Assert.Contains(rod.Stair.Regulation.DoubtWords.Split(' ')[0], Words(cover), StringComparison.Ordinal);
            foreach (var sheet in cover) Assert.Empty(SheetCheck.Overlaps(sheet));
        }
    }

    [Fact]
    public void A_table_of_the_shops_own_says_so_on_the_sheet()
    {
        var own = new OwnRegulation { Id = "own-heron", Title = "Heron Mill", BasedOn = "england-2013-private", Clauses = [new() { Rule = "pitch", Clause = "shop 2", Most = 41.9, Source = "s" }] };
        var stair = Stair.SetOut(Samples.Job("left-kite-low") with { Regulation = own.Id }, shelf: RegulationShelf.Published.With(own.Table())).Value!;
        var rod = Rods.Sample("left-kite-low") with { Stair = stair };
        var words = Words(Cover.Make(rod, StairSheets.Make(rod)));
        Assert.Contains("Heron Mill (the shop's own table)", words, StringComparison.Ordinal);
        Assert.Contains("shop 2", words, StringComparison.Ordinal);
        Assert.Contains("the shop's own", words.Replace("(the shop's own table)", ""), StringComparison.Ordinal);
    }

    [Fact]
    public void Sheets_are_numbered_after_the_covers()
    {
        var rod = Rods.Sample("left-kite-low", "A4");
        var others = StairSheets.Make(rod);
        var cover = Cover.Make(rod, others);
        Assert.True(cover.Count > 1);
        var texts = FlatMarks.Of(cover[^1].Marks).Select(m => m.Mark).OfType<TextMark>().Select(t => t.Text).ToList();
        Assert.Contains((cover.Count + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), texts);
        Assert.Contains((cover.Count + others.Count).ToString(System.Globalization.CultureInfo.InvariantCulture), texts);
    }
}
