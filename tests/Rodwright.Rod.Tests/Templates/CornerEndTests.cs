using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Joinery;
using Rodwright.Rod.Templates;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Templates;

public sealed class CornerEndTests
{
    [Theory]
    [InlineData("left-kite-low", "A3", 1)]
    [InlineData("right-kite-top", "A1", 1)]
    [InlineData("double-kite", "A4", 2)]
    public void A_dovetailed_corner_has_a_full_size_template_on_which_nothing_overlaps(string sample, string paper, int corners)
    {
        var job = Samples.Job(sample);
        var stair = Stair.SetOut(job with { Practice = job.Practice with { CornerJoint = CornerJoint.Dovetailed } }).Value!;
        Assert.True(PaperStock.TryParse(paper, out var stock, out _));
        var sheets = CornerEnds.Sheets(new(stair, stair.Prove(), new(stock, null, "1 March"))).ToList();
        Assert.Equal(corners, sheets.Count);
        Assert.All(sheets, s => Assert.Empty(SheetCheck.Overlaps(s)));
    }

    [Fact]
    public void A_housed_corner_has_none()
    {
        Assert.Empty(CornerEnds.Sheets(RodJobs.Of("left-kite-low")));
    }
}
