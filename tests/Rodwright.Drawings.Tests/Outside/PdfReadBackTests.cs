using Rodwright.Drawings.Formats.Pdf;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Tests.Samples;
using Rodwright.Geometry;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;
using Xunit;

namespace Rodwright.Drawings.Tests.Outside;

/// <summary>PDF files read back by PdfPig, an independent reader.</summary>
public sealed class PdfReadBackTests
{
    private const double Millimetre = 25.4 / 72;

    [Fact]
    public void Pages_have_exactly_the_size_of_their_paper_and_may_differ()
    {
        using var pdf = Read(Sampler.Set());
        Assert.Equal(3, pdf.NumberOfPages);
        foreach (var (sheet, page) in Sampler.Set().Sheets.Zip(pdf.GetPages()))
        {
            Assert.True(Math.Abs(sheet.Paper.Width - page.Width * Millimetre) < 0.001, sheet.Name);
            Assert.True(Math.Abs(sheet.Paper.Height - page.Height * Millimetre) < 0.001, sheet.Name);
        }
    }

    [Fact]
    public void Lines_read_back_true_to_a_twentieth_of_a_millimetre()
    {
        var wanted = new List<(Point2 A, Point2 B)>();
        for (var i = 0; i < 300; i++) wanted.Add((new(20 + i * 5.17 % 2300, 30 + i * 1.31), new(30 + i * 13.7 % 2300, 530 - i * 0.77)));
        var sheet = Bare([.. wanted.Select(w => StrokeMark.Line(w.A, w.B, Pens.Visible, Layer.Visible))], new("long", 2400, 610));
        using var pdf = Read(new("s", "s", [sheet]));
        var found = pdf.GetPage(1).Paths.SelectMany(p => p).SelectMany(s => s.Commands).OfType<PdfSubpath.Line>().ToList();
        Assert.Equal(wanted.Count, found.Count);
        var worst = wanted.Zip(found).Max(w => Math.Max(Millimetres(w.Second.From).DistanceTo(w.First.A), Millimetres(w.Second.To).DistanceTo(w.First.B)));
        Assert.True(worst < Tolerance.Print, $"worst {worst} mm");
    }

    [Fact]
    public void Arcs_run_on_their_circles_even_when_metres_wide()
    {
        var arc = new Path2([new(new(50, 50), 0.4), new(new(2300, 80), -0.7), new(new(2200, 500))], false);
        using var pdf = Read(new("s", "s", [Bare([new StrokeMark(arc, Pens.Outline, Layer.OutlineToCut)], new("long", 2400, 1400))]));
        var curves = pdf.GetPage(1).Paths.SelectMany(p => p).SelectMany(s => s.Commands).OfType<PdfSubpath.CubicBezierCurve>().ToList();
        Assert.True(curves.Count > 6);
        foreach (var curve in curves)
        {
            for (var k = 0; k <= 8; k++)
            {
                var (t, u) = (k / 8.0, 1 - k / 8.0);
                var (a, b, c, d) = (Millimetres(curve.StartPoint), Millimetres(curve.FirstControlPoint), Millimetres(curve.SecondControlPoint), Millimetres(curve.EndPoint));
                var p = new Point2(
                    u * u * u * a.X + 3 * u * u * t * b.X + 3 * u * t * t * c.X + t * t * t * d.X,
                    u * u * u * a.Y + 3 * u * u * t * b.Y + 3 * u * t * t * c.Y + t * t * t * d.Y);
                Assert.True(arc.DistanceTo(p) < Tolerance.Print);
            }
        }
    }

    [Fact]
    public void Lettering_reads_back_where_it_stands_in_the_embedded_face()
    {
        Mark[] texts =
        [
            new TextMark(new(100, 200), "Rise 187.5 ⌀", 5, Layer.Lettering),
            new TextMark(new(150, 100), "up", 7, Layer.Lettering, turn: Angle.FromDegrees(90), bold: true),
        ];
        using var pdf = Read(new("s", "s", [Bare(texts, PaperSize.A4)]));
        var letters = pdf.GetPage(1).Letters;
        Assert.Equal("Rise 187.5 ⌀up", string.Concat(letters.Select(l => l.Value)));
        Assert.All(letters, l => Assert.Contains("DejaVu Sans Condensed", l.FontName));
        Assert.True(Millimetres(letters[0].StartBaseLine).DistanceTo(new(100, 200)) < Tolerance.Print);
        var level = letters.Take(12).ToList();
        Assert.True(Math.Abs(Millimetres(level[^1].EndBaseLine).X - 100 - ((TextMark)texts[0]).Width) < Tolerance.Print);
        Assert.True(Millimetres(letters[12].StartBaseLine).DistanceTo(new(150, 100)) < Tolerance.Print);
        Assert.True(letters[13].StartBaseLine.Y > letters[12].StartBaseLine.Y + 5);
    }

    [Fact]
    public void Pens_keep_their_width_dashes_and_grey()
    {
        using var pdf = Read(new("s", "s", [Bare([StrokeMark.Line(new(10, 10), new(100, 10), Pens.Centre, Layer.Centre)], PaperSize.A4)]));
        var path = Assert.Single(pdf.GetPage(1).Paths);
        Assert.Equal(0.18, path.LineWidth * Millimetre, 3);
        Assert.Equal([7.2, 1.44, 0.36, 1.44], path.LineDashPattern!.Value.Array.Select(d => Math.Round(d * Millimetre, 2)));
    }

    [Fact]
    public void A_window_hides_what_lies_outside_it()
    {
        var clip = new ClipMark(new(50, 50, 80, 80), [StrokeMark.Line(new(0, 60), new(200, 60), Pens.Visible, Layer.Visible)]);
        using var stream = new MemoryStream();
        new PdfSharpWriter().Write(new("s", "s", [Bare([clip], PaperSize.A4)]), stream);
        using var pdf = PdfDocument.Open(stream.ToArray(), new ParsingOptions { ClipPaths = false });
        var window = pdf.GetPage(1).Paths.Single(p => p.IsClipping).GetBoundingRectangle()!.Value;
        Assert.True(Millimetres(window.BottomLeft).DistanceTo(new(50, 50)) < Tolerance.Print);
        Assert.True(Millimetres(window.TopRight).DistanceTo(new(80, 80)) < Tolerance.Print);
    }

    [Fact]
    public void Viewers_are_told_not_to_scale()
    {
        using var pdf = Read(Sampler.Set());
        var preferences = pdf.Structure.Catalog.CatalogDictionary.Data["ViewerPreferences"];
        if (preferences is IndirectReferenceToken reference) preferences = pdf.Structure.GetObject(reference.Data).Data;
        Assert.Equal("None", ((NameToken)((DictionaryToken)preferences).Data["PrintScaling"]).Data);
    }

    [Fact]
    public void Two_threads_may_write_at_once()
    {
        var sizes = new int[4];
        Parallel.For(0, 4, i =>
        {
            using var stream = new MemoryStream();
            new PdfSharpWriter().Write(Sampler.Set(), stream);
            using var pdf = PdfDocument.Open(stream.ToArray());
            sizes[i] = pdf.GetPage(1).Letters.Count;
        });
        Assert.All(sizes, s => Assert.Equal(sizes[0], s));
    }

    private static Sheet Bare(Mark[] marks, PaperSize paper) => new() { Name = "s", Title = "s", Paper = paper, Marks = [.. marks] };

    private static Point2 Millimetres(PdfPoint p) => new(p.X * Millimetre, p.Y * Millimetre);

    private static PdfDocument Read(SheetSet set)
    {
        using var stream = new MemoryStream();
        new PdfSharpWriter().Write(set, stream);
        return PdfDocument.Open(stream.ToArray());
    }
}
