using System.Text;
using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Svg;

/// <summary>
/// Writes marks as a piece of SVG that a page puts into a picture of its own, in as few elements as it goes. Lines and letters take the page's colour
/// (currentColor), ink and tints are opacities; what covers has class knockout, for the page to fill with its paper; areas to pick have class hit. Between
/// two fills that cover, lines of one layer, pen and thing are one path, and come before all lettering. Windows are cut, so nothing nests. No ids, no styles.
/// Same marks, same text.
/// </summary>
internal sealed class SvgFragment : IMarkVisitor
{
    private const int Decimals = 2; // a hundredth of a millimetre of paper: a quarter of a pixel at the closest look
    private readonly StringBuilder text = new(1 << 12);
    private readonly double height;
    private readonly SvgPath paths;
    private readonly OrderedDictionary<(Layer Layer, Pen Pen), OrderedDictionary<string, List<Path2>>> lines = [];
    private readonly OrderedDictionary<(Layer Layer, double Height, bool Bold), List<TextMark>> words = [];
    private Box2? window;

    private SvgFragment(double height)
    {
        this.height = height;
        paths = new(text, height, Decimals);
    }

    public static string Write(IEnumerable<Mark> marks, double height)
    {
        var writer = new SvgFragment(height);
        writer.text.Append("<g fill=\"none\" stroke=\"currentColor\" stroke-linecap=\"round\" stroke-linejoin=\"round\"");
        writer.text.Attribute("font-family", SvgWriter.Families).Append('>');
        foreach (var mark in marks) mark.Accept(writer);
        writer.Flush();
        return writer.text.Append("</g>").ToString();
    }

    public void Visit(StrokeMark mark)
    {
        if (window is { } w && !w.Holds(mark.Bounds))
        {
            if (Misses(w, mark.Bounds)) return;
            foreach (var piece in PathClip.Inside(mark.Path, w)) Add(mark, piece);
        }
        else Add(mark, mark.Path);
    }

    public void Visit(FillMark mark)
    {
        IReadOnlyList<Path2> outlines = mark.Outlines;
        if (window is { } w && !w.Holds(mark.Bounds)) outlines = [.. outlines.Select(o => PathClip.Filled(o, w)).OfType<Path2>()];
        if (outlines.Count == 0) return;
        var hit = mark.Layer == Layer.Hit;
        var covers = mark.Tint == 0 && !hit;
        // A tint shows what lies under it: it may as well lie under it itself.
        if (covers) Flush();
        text.Append("<path").Attribute("class", covers ? mark.Layer.Id + " knockout" : mark.Layer.Id).Attribute("data-of", mark.Of);
        if (hit) text.Append(" stroke=\"none\" pointer-events=\"all\"");
        else if (covers) text.Append(" fill=\"#fff\" stroke=\"none\"");
        else
        {
            text.Append(" fill=\"currentColor\" stroke=\"none\"");
            if (mark.Tint < 1) Numbered("fill-opacity", mark.Tint);
        }
        if (outlines.Count > 1) text.Append(" fill-rule=\"evenodd\"");
        text.Append(" d=\"");
        foreach (var outline in outlines) paths.Append(outline);
        text.Append("\"/>");
    }

    public void Visit(TextMark mark)
    {
        if (mark.Text.Length == 0 || (window is { } w && Misses(w, mark.Bounds))) return;
        var key = (mark.Layer, mark.Height, mark.Bold);
        if (!words.TryGetValue(key, out var list)) words.Add(key, list = []);
        list.Add(mark);
    }

    public void Visit(ClipMark mark)
    {
        var (outer, inner) = (window, mark.Window);
        window = outer?.Common(inner) ?? inner;
        if (window is { Width: > 0, Height: > 0 })
        {
            foreach (var within in mark.Marks) within.Accept(this);
        }
        window = outer;
    }

    public void Visit(GroupMark mark)
    {
        foreach (var inner in mark.Marks) inner.Accept(this);
    }

    private static bool Misses(Box2 w, Box2 b) => b.IsEmpty || b.MinX > w.MaxX || b.MaxX < w.MinX || b.MinY > w.MaxY || b.MaxY < w.MinY;

    private void Add(StrokeMark mark, Path2 path)
    {
        var key = (mark.Layer, mark.Pen);
        if (!lines.TryGetValue(key, out var things)) lines.Add(key, things = []);
        if (!things.TryGetValue(mark.Of ?? "", out var among)) things.Add(mark.Of ?? "", among = []);
        among.Add(path);
    }

    /// <summary>Writes the lines and then the lettering gathered so far.</summary>
    private void Flush()
    {
        foreach (var ((layer, pen), things) in lines)
        {
            var alone = things.Count == 1;
            text.Append(alone ? "<path" : "<g").Attribute("class", layer.Id);
            Numbered("stroke-width", pen.Width);
            if (pen.Ink < 1) Numbered("stroke-opacity", pen.Ink);
            if (pen.Dash.Lengths.Length > 0)
            {
                text.Append(" stroke-linecap=\"butt\" stroke-dasharray=\"");
                for (var i = 0; i < pen.Dash.Lengths.Length; i++)
                {
                    if (i > 0) text.Append(' ');
                    Geometry.Number.Append(text, pen.Dash.Lengths[i] * pen.Width, Decimals);
                }
                text.Append('"');
            }
            if (!alone) text.Append('>');
            foreach (var (of, among) in things)
            {
                if (!alone) text.Append("<path");
                if (of.Length > 0) text.Attribute("data-of", of);
                text.Append(" d=\"");
                foreach (var path in among) paths.Append(path);
                text.Append("\"/>");
            }
            if (!alone) text.Append("</g>");
        }
        lines.Clear();
        foreach (var mark in words.Values.SelectMany(m => m).Where(m => m.Knockout)) Knockout(mark);
        foreach (var ((layer, size, bold), marks) in words)
        {
            text.Append("<g").Attribute("class", layer.Id).Append(" fill=\"currentColor\" stroke=\"none\"");
            Numbered("font-size", Lettering.EmSize(size, bold));
            if (bold) text.Append(" font-weight=\"bold\"");
            text.Append('>');
            foreach (var mark in marks) Word(mark);
            text.Append("</g>");
        }
        words.Clear();
    }

    private void Knockout(TextMark mark)
    {
        text.Append("<path class=\"knockout\" fill=\"#fff\" stroke=\"none\" d=\"");
        paths.Append(Path2.Polygon(mark.KnockoutCorners));
        text.Append("\"/>");
    }

    private void Word(TextMark mark)
    {
        var at = mark.BaselineStart;
        text.Append("<text").Attribute("data-of", mark.Of);
        if (mark.Turn.Radians == 0)
        {
            Numbered("x", at.X);
            Numbered("y", height - at.Y);
        }
        else
        {
            text.Append(" transform=\"translate(");
            paths.Append(at);
            text.Append(")rotate(");
            Geometry.Number.Append(text, -mark.Turn.Degrees, 3);
            text.Append(")\"");
        }
        // Holds the measured length even where the page falls back to another face.
        Numbered("textLength", mark.Width);
        text.Append(" lengthAdjust=\"spacingAndGlyphs\">");
        // Pages fold spaces that follow one another.
        text.Escaped(mark.Text.Replace("  ", " \u00A0", StringComparison.Ordinal)).Append("</text>");
    }

    private void Numbered(string name, double value)
    {
        text.Append(' ').Append(name).Append("=\"");
        Geometry.Number.Append(text, value, Decimals);
        text.Append('"');
    }
}
