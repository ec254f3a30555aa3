using Rodwright.Drawings.Formats.Pdf;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod;
using Rodwright.Rod.Sheets;
using Rodwright.Testing;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using Xunit;

namespace Rodwright.Tests.Packs;

/// <summary>
/// The strings' sheets at full size, written as PDF and read again by an independent reader (PdfPig): every straight edge of every board where it should be,
/// to 0.05 mm; the wall strings' two boards in one development by one displacement.
/// </summary>
public class PdfReadBackTests
{
    private const double Millimetre = 25.4 / 72;

    public static TheoryData<string> SampleNames => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(SampleNames))]
    public void Every_string_reads_back_at_its_true_length(string name)
    {
        var stair = Stair.SetOut(Samples.Job(name)).Value!;
        var rod = new RodJob(stair, stair.Prove(), new RodStyle(PaperStock.Of(new PaperSize("board", 5000, 4000)), Scale.Full, "2026-03-02"));
        var pages = StringSheets.Walls(rod).Concat(StringSheets.Newels(rod)).ToList();
        Assert.All(pages, p => Assert.True(p.Scale.IsFull, p.Name));
        var drawn = pages.Select(LinesOf).ToList();
        foreach (var board in stair.Kit.Strings)
        {
            var outline = board.Part.FaceSide.Outline;
            var edges = Enumerable.Range(0, outline.EdgeCount).Select(outline.Edge).Where(e => e.Bulge == 0).ToList();
            Assert.True(drawn.Exists(lines => Has(lines, edges)), $"{board.Site.Mark} does not read back true");
        }
    }

    private static bool Has(List<(Point2 A, Point2 B)> lines, List<(Point2 From, Point2 To, double Bulge)> edges)
    {
        var longest = edges.MaxBy(e => e.From.DistanceTo(e.To));
        return lines.Where(l => ((l.B - l.A) - (longest.To - longest.From)).Length < Tolerance.Print)
            .Select(l => l.A - longest.From)
            .Any(move => edges.TrueForAll(e => lines.Exists(l => l.A.DistanceTo(e.From + move) < Tolerance.Print && l.B.DistanceTo(e.To + move) < Tolerance.Print)));
    }

    private static List<(Point2 A, Point2 B)> LinesOf(Sheet sheet)
    {
        var file = new PdfFormat().Write(new("strings", "strings", [sheet]))[0];
        using var pdf = PdfDocument.Open(file.Bytes.ToArray());
        var lines = new List<(Point2 A, Point2 B)>();
        foreach (var sub in pdf.GetPage(1).Paths.SelectMany(p => p))
        {
            var strokes = sub.Commands.OfType<PdfSubpath.Line>().ToList();
            lines.AddRange(strokes.Select(l => (Point(l.From), Point(l.To))));
            // A closing stroke has no command of its own.
            if (sub.IsClosed() && strokes.Count > 1) lines.Add((Point(strokes[^1].To), Point(sub.Commands.OfType<PdfSubpath.Move>().First().Location)));
        }
        return lines;
    }

    private static Point2 Point(PdfPoint p) => new(p.X * Millimetre, p.Y * Millimetre);
}
