using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;

namespace Rodwright.Drawings.Formats.Pdf;

/// <summary>Keeps one library pen, brush and font for each of ours, for one document.</summary>
internal sealed class PdfPens
{
    private readonly Dictionary<Pen, XPen> pens = [];
    private readonly Dictionary<double, XBrush> brushes = [];
    private readonly Dictionary<(double, bool), XFont> fonts = [];

    public XPen Of(Pen pen)
    {
        if (pens.TryGetValue(pen, out var known)) return known;
        var dashed = !pen.Dash.Lengths.IsEmpty;
        var made = new XPen(Grey(pen.Ink), pen.Width * PdfSharpWriter.Points)
        {
            LineCap = dashed ? XLineCap.Flat : XLineCap.Round,
            LineJoin = XLineJoin.Round,
        };
        if (dashed) made.DashPattern = [.. pen.Dash.Lengths]; // the library too counts in pen widths
        return pens[pen] = made;
    }

    public XBrush Of(double tint)
    {
        if (brushes.TryGetValue(tint, out var known)) return known;
        return brushes[tint] = new XSolidBrush(Grey(tint));
    }

    public XFont Of(double height, bool bold)
    {
        if (fonts.TryGetValue((height, bold), out var known)) return known;
        return fonts[(height, bold)] = new XFont(
            EmbeddedFontResolver.Family, Lettering.EmSize(height, bold) * PdfSharpWriter.Points, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular,
            new XPdfFontOptions(PdfFontEncoding.Unicode));
    }

    private static XColor Grey(double ink)
    {
        var level = (int)Math.Round(255 * (1 - Math.Clamp(ink, 0, 1)));
        return XColor.FromArgb(level, level, level);
    }
}
