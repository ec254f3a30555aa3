using System.Text;
using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Svg;

/// <summary>
/// Writes one sheet as SVG in millimetres, arcs as arcs. Every run of marks carries its layer as a class and its thing drawn as data-of, so
/// that a page can style and pick them; no ids are used, so that several drawings can share a page. Same sheet, same text.
/// </summary>
public sealed class SvgWriter : IMarkVisitor
{
    private const int Decimals = 3; // a thousandth of a millimetre of paper
    /// <summary>The embedded face, and what comes near it where a page has not got it.</summary>
    internal const string Families = $"'{Lettering.Family}','DejaVu Sans','Arial Narrow',Arial,sans-serif";

    private readonly StringBuilder text = new(1 << 16);
    private readonly double paperHeight;
    private readonly SvgPath paths;
    private (Layer? Layer, string? Of, Pen? Pen) run;

    private SvgWriter(double paperHeight)
    {
        this.paperHeight = paperHeight;
        paths = new(text, paperHeight, Decimals);
    }

    /// <summary>The whole sheet.</summary>
    public static string Write(Sheet sheet) => Write(sheet.Title, sheet.Paper.Width, sheet.Paper.Height, sheet.AllMarks);

    /// <summary>Marks on a plain ground, for a screen.</summary>
    /// <param name="title">Read out by screen readers.</param>
    /// <param name="width">Ground along x, mm.</param>
    /// <param name="height">Ground along y, mm.</param>
    /// <param name="marks">The marks, in drawing order.</param>
    public static string Write(string title, double width, double height, IEnumerable<Mark> marks)
    {
        var writer = new SvgWriter(height);
        writer.Open(title, width, height);
        foreach (var mark in marks) mark.Accept(writer);
        writer.EndRun();
        writer.text.Append("</svg>\n");
        return writer.text.ToString();
    }

    /// <summary>Marks for a page that themes them: one group without a root; see <see cref="SvgFragment"/> for what the page may count on.</summary>
    /// <param name="marks">The marks, in drawing order.</param>
    /// <param name="height">Where y is 0 for the page: y runs down from here, mm.</param>
    public static string Fragment(IEnumerable<Mark> marks, double height) => SvgFragment.Write(marks, height);

    /// <inheritdoc/>
    public void Visit(StrokeMark mark)
    {
        if (run != (mark.Layer, mark.Of, mark.Pen))
        {
            EndRun();
            run = (mark.Layer, mark.Of, mark.Pen);
            text.Append("<g").Attribute("class", mark.Layer.Id).Attribute("data-of", mark.Of);
            text.Append(" fill=\"none\"").Attribute("stroke", Grey(mark.Pen.Ink));
            Number("stroke-width", mark.Pen.Width);
            if (mark.Pen.Dash.Lengths.Length > 0)
                text.Attribute("stroke-dasharray", string.Join(' ', mark.Pen.Dash.Lengths.Select(l => Print(l * mark.Pen.Width)))).Append(" stroke-linecap=\"butt\"");
            text.Append(">\n");
        }
        text.Append("<path d=\"");
        paths.Append(mark.Path);
        text.Append("\"/>\n");
    }

    /// <inheritdoc/>
    public void Visit(FillMark mark)
    {
        EndRun();
        text.Append("<path").Attribute("class", mark.Layer.Id).Attribute("data-of", mark.Of).Attribute("fill", Grey(mark.Tint));
        text.Append(" fill-rule=\"evenodd\" d=\"");
        foreach (var outline in mark.Outlines) paths.Append(outline);
        text.Append("\"/>\n");
    }

    /// <inheritdoc/>
    public void Visit(TextMark mark)
    {
        if (mark.Text.Length == 0) return;
        EndRun();
        if (mark.Knockout)
        {
            text.Append("<path class=\"knockout\" fill=\"#fff\" d=\"");
            paths.Append(Path2.Polygon(mark.KnockoutCorners));
            text.Append("\"/>\n");
        }
        var at = mark.BaselineStart;
        text.Append("<text").Attribute("class", mark.Layer.Id).Attribute("data-of", mark.Of);
        if (mark.Turn.Radians == 0)
        {
            Number("x", at.X);
            Number("y", paperHeight - at.Y);
        }
        else
        {
            text.Append(" transform=\"translate(").Append(Print(at.X)).Append(' ').Append(Print(paperHeight - at.Y));
            text.Append(")rotate(").Append(Print(-mark.Turn.Degrees)).Append(")\"");
        }
        Number("font-size", Lettering.EmSize(mark.Height, mark.Bold));
        // Holds the measured length even where the page falls back to another face.
        Number("textLength", mark.Width);
        text.Append(" lengthAdjust=\"spacingAndGlyphs\"");
        if (mark.Bold) text.Append(" font-weight=\"bold\"");
        text.Append('>').Escaped(mark.Text).Append("</text>\n");
    }

    /// <inheritdoc/>
    public void Visit(ClipMark mark)
    {
        EndRun();
        // A nested picture clips by itself and needs no id.
        var w = mark.Window;
        var (x, y, width, height) = (Print(w.MinX), Print(paperHeight - w.MaxY), Print(Math.Max(0, w.Width)), Print(Math.Max(0, w.Height)));
        text.Append("<svg").Attribute("x", x).Attribute("y", y).Attribute("width", width).Attribute("height", height);
        text.Append(" overflow=\"hidden\"").Attribute("viewBox", $"{x} {y} {width} {height}").Append(">\n");
        foreach (var inner in mark.Marks) inner.Accept(this);
        EndRun();
        text.Append("</svg>\n");
    }

    /// <inheritdoc/>
    public void Visit(GroupMark mark)
    {
        EndRun();
        text.Append("<g").Attribute("data-id", mark.Id).Append("><title>").Escaped(mark.Title).Append("</title>\n");
        foreach (var inner in mark.Marks) inner.Accept(this);
        EndRun();
        text.Append("</g>\n");
    }

    private static string Print(double value) => Geometry.Number.Print(value, Decimals);

    private static string Grey(double ink)
    {
        var level = (int)Math.Round(255 * (1 - Math.Clamp(ink, 0, 1)));
        return $"#{level:x2}{level:x2}{level:x2}";
    }

    private void Open(string title, double width, double height)
    {
        var (w, h) = (Print(width), Print(height));
        text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\"").Attribute("width", w + "mm").Attribute("height", h + "mm");
        text.Attribute("viewBox", $"0 0 {w} {h}").Append(" role=\"img\" stroke-linecap=\"round\" stroke-linejoin=\"round\"");
        text.Attribute("font-family", Families).Append(" xml:space=\"preserve\">");
        text.Append("<title>").Escaped(title).Append("</title>\n<rect class=\"paper\"").Attribute("width", w).Attribute("height", h).Append(" fill=\"#fff\"/>\n");
    }

    private void EndRun()
    {
        if (run.Pen is null) return;
        run = default;
        text.Append("</g>\n");
    }

    private void Number(string name, double value) => text.Attribute(name, Print(value));
}
