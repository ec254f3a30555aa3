using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Rod.Sheets;
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
