using UglyToad.PdfPig;

namespace Rodwright.Browser.Tests.Pages;

[Collection("workshop")]
public sealed class PrintTests(Workshop workshop)
{
    [Fact]
    public async Task A_sheet_printed_by_the_browser_is_of_the_papers_size_and_its_lines_are_true()
    {
        await using var visit = await Visit.Begin(workshop.Browser, workshop.Bench.Address, name: "Ada");
        var job = await visit.Sample("Larkmoor");
        var page = visit.Page;
        await page.GotoAsync($"{job}/r/1/print/plan?paper=A3");
        await visit.Picture("15-print");
        var pdf = await page.PdfAsync(new() { PreferCSSPageSize = true, PrintBackground = true });
        using var printed = PdfDocument.Open(pdf);
        Assert.Equal(1, printed.NumberOfPages);
        var sheet = printed.GetPage(1);
        const double point = 25.4 / 72;
        Assert.Equal(420, sheet.Width * point, 0.5);
        Assert.Equal(297, sheet.Height * point, 0.5);
        // The sheet's own file, read by the same reader, has the same lines in the same places.
        using var client = new HttpClient();
        var own = await client.GetByteArrayAsync($"{job}/r/1/sheets/plan.pdf?paper=A3");
        using var drawn = PdfDocument.Open(own);
        var (a, b) = (Extent(sheet), Extent(drawn.GetPage(1)));
        Assert.Equal(b.Width * point, a.Width * point, 0.05);
        Assert.Equal(b.Height * point, a.Height * point, 0.05);
        Assert.True(a.Width * point > 380);
        visit.Quiet();

        static (double Width, double Height) Extent(UglyToad.PdfPig.Content.Page page)
        {
            // The frame is the largest closed box on the sheet that is not the paper itself.
            var boxes = page.Paths.Where(p => p.IsStroked).Select(p => p.GetBoundingRectangle()).Where(r => r is not null).Select(r => r!.Value)
                .Where(r => r.Width * point is > 200 and < 415 && r.Height * point > 100).ToList();
            var largest = boxes.MaxBy(r => r.Width * r.Height);
            return (largest.Width, largest.Height);
        }
    }
}
