using Rodwright.Drawings.Paper;
using Rodwright.Hosting.Files;
using Rodwright.Joinery;
using Rodwright.Rod;
using Rodwright.Rod.Sheets;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Tests.Hosting;

/// <summary>A sheet as a page to print.</summary>
public sealed class PrintPageTests
{
    [Theory]
    [InlineData("feet-and-inches", "measure the 4 inch bar")]
    [InlineData("straight-flight", "measure the 100 mm bar")]
    public void It_says_which_bar_to_measure_before_anything_is_cut(string sample, string words)
    {
        var stair = Stair.SetOut(Samples.Job(sample)).Value!;
        Assert.True(PaperStock.TryParse("A3", out var paper, out _));
        var sheet = StairSheets.Make(new RodJob(stair, stair.Prove(), new(paper, null, "1 March")))[0];
        Assert.Contains(words, PrintPage.Of(stair.Job.Title, sheet with { TrueSize = true }), StringComparison.Ordinal);
        Assert.Contains("no margins, on A3. <button", PrintPage.Of(stair.Job.Title, sheet with { TrueSize = false }), StringComparison.Ordinal);
    }
}
