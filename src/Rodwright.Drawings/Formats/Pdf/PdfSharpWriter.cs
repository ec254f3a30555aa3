using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;

namespace Rodwright.Drawings.Formats.Pdf;

/// <summary>Writes PDF by way of PDFsharp. Its bytes differ from run to run (random ids), so files are compared by content.</summary>
public sealed class PdfSharpWriter : IPdfWriter
{
    /// <summary>Points to a millimetre.</summary>
    internal const double Points = 72 / 25.4;

    /// <inheritdoc/>
    public void Write(SheetSet set, Stream stream)
    {
        EmbeddedFontResolver.Ensure();
        using var document = new PdfDocument();
        document.Info.Title = set.Title;
        document.Info.Creator = "Rodwright";
        document.ViewerPreferences.Elements.SetName("/PrintScaling", "/None");
        var pens = new PdfPens();
        foreach (var sheet in set.Sheets)
        {
            using var graphics = XGraphics.FromPdfPage(AddPage(document, sheet.Paper));
            var painter = new PdfPainter(graphics, pens, sheet.Paper.Height);
            foreach (var mark in sheet.AllMarks) mark.Accept(painter);
        }
        if (set.Sheets.IsEmpty) AddPage(document, PaperSize.A4);
        document.Save(stream, closeStream: false);
    }

    private static PdfPage AddPage(PdfDocument document, PaperSize paper)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromPoint(paper.Width * Points);
        page.Height = XUnit.FromPoint(paper.Height * Points);
        return page;
    }
}
