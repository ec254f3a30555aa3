using System.Globalization;
using Rodwright.Drawings.Formats.Pdf;
using Rodwright.Drawings.Paper;
using Rodwright.Joinery;
using Rodwright.Rod;
using Rodwright.Rod.Packs;
using Rodwright.Testing;
using UglyToad.PdfPig;
using Xunit;

namespace Rodwright.Tests.Packs;

/// <summary>PDF bytes differ from run to run with their writer's ids; what stands on the pages must not, whatever the machine's language.</summary>
public class PdfContentTests
{
    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("half-scale-teaching")]
    public void Words_and_lines_are_the_same_under_german_and_turkish(string name)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            var usual = Pages(name);
            Assert.True(usual.Count > 20);
            foreach (var culture in new[] { "de-DE", "tr-TR" })
            {
                CultureInfo.CurrentCulture = new CultureInfo(culture);
                Assert.Equal(usual, Pages(name));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>Each page as its words with their places, and its paths' corners.</summary>
    private static List<string> Pages(string name)
    {
        var stair = Stair.SetOut(Samples.Job(name)).Value!;
        var pack = Pack.Draw(new RodJob(stair, stair.Prove(), new RodStyle(PaperStock.Of(PaperSize.A3.Landscape), null, "2026-03-02")));
        var pages = new List<string>();
        foreach (var set in new[] { pack.Set, pack.TrueSize })
        {
            using var pdf = PdfDocument.Open(new PdfFormat().Write(set)[0].Bytes.ToArray());
            foreach (var page in pdf.GetPages())
            {
                var letters = string.Concat(page.Letters.Select(l => FormattableString.Invariant($"{l.Value}@{l.StartBaseLine.X:0.00},{l.StartBaseLine.Y:0.00} ")));
                var paths = string.Concat(page.Paths.Select(p => p.GetBoundingRectangle() is { } b ? FormattableString.Invariant($"{b.Left:0.00},{b.Bottom:0.00},{b.Right:0.00},{b.Top:0.00};") : "-"));
                pages.Add(letters + "|" + paths);
            }
        }
        return pages;
    }
}
