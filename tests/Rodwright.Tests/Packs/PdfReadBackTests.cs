using Rodwright.Drawings.Paper;
using Rodwright.Joinery;
using Rodwright.Rod;
using Rodwright.Rod.Sheets;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Tests.Packs;

/// <summary>
/// The strings' sheets at full size, written as PDF and read again by an independent reader (PdfPig): every straight edge of every board where it should be,
/// to 0.05 mm; the wall strings' two boards in one development by one displacement.
/// </summary>
public class PdfReadBackTests
{
    public static TheoryData<string> SampleNames => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(SampleNames))]
    public void Every_string_reads_back_at_its_true_length(string name)
    {
        var stair = Stair.SetOut(Samples.Job(name)).Value!;
        var rod = new RodJob(stair, stair.Prove(), new RodStyle(PaperStock.Of(new PaperSize("board", 5000, 4000)), Scale.Full, "2026-03-02"));
        var pages = StringSheets.Walls(rod).Concat(StringSheets.Newels(rod)).ToList();
        Assert.All(pages, p => Assert.True(p.Scale.IsFull, p.Name));
        var drawn = pages.Select(PdfLines.Of).ToList();
        foreach (var board in stair.Kit.Strings)
        {
            Assert.True(drawn.Exists(lines => PdfLines.Hold(lines, board.Part.FaceSide.Outline)), $"{board.Site.Mark} does not read back true");
        }
    }
}
