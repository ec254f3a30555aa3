using PdfSharp.Drawing;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Pdf;

/// <summary>Paints marks on one page. The library's y runs down from the top in points; the turn-over is done here and nowhere else.</summary>
internal sealed class PdfPainter(XGraphics graphics, PdfPens pens, double paperHeight) : IMarkVisitor
{
    public void Visit(StrokeMark mark)
    {
        var pen = pens.Of(mark.Pen);
        var path = mark.Path;
        if (path.Vertices.Length == 2 && !path.Closed && path.Vertices[0].Bulge == 0)
        {
            graphics.DrawLine(pen, ToPage(path.Vertices[0].At), ToPage(path.Vertices[1].At));
            return;
        }
        var trace = new XGraphicsPath();
        Trace(trace, path);
        graphics.DrawPath(pen, trace);
    }

    public void Visit(FillMark mark)
    {
        var trace = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (var outline in mark.Outlines) Trace(trace, outline);
        graphics.DrawPath(pens.Of(mark.Tint), trace);
    }

    public void Visit(TextMark mark)
    {
        if (mark.Text.Length == 0) return;
        if (mark.Knockout) graphics.DrawPolygon(pens.Of(0), [.. mark.KnockoutCorners.Select(ToPage)], XFillMode.Alternate);
        var font = pens.Of(mark.Height, mark.Bold);
        var at = ToPage(mark.BaselineStart);
        if (mark.Turn.Radians == 0)
        {
            graphics.DrawString(mark.Text, font, pens.Of(1), at);
            return;
        }
        var state = graphics.Save();
        graphics.RotateAtTransform(-mark.Turn.Degrees, at);
        graphics.DrawString(mark.Text, font, pens.Of(1), at);
        graphics.Restore(state);
    }

    public void Visit(ClipMark mark)
    {
        var state = graphics.Save();
        var corner = ToPage(new(mark.Window.MinX, mark.Window.MaxY));
        graphics.IntersectClip(new XRect(
            corner.X, corner.Y, Math.Max(0, mark.Window.Width) * PdfSharpWriter.Points, Math.Max(0, mark.Window.Height) * PdfSharpWriter.Points));
        foreach (var inner in mark.Marks) inner.Accept(this);
        graphics.Restore(state);
    }

    public void Visit(GroupMark mark)
    {
        foreach (var inner in mark.Marks) inner.Accept(this);
    }

    private void Trace(XGraphicsPath trace, Path2 path)
    {
        trace.StartFigure();
        for (var i = 0; i < path.EdgeCount; i++)
        {
            var (a, b, bulge) = path.Edge(i);
            if (bulge == 0)
            {
                if (!(path.Closed && i == path.EdgeCount - 1)) trace.AddLine(ToPage(a), ToPage(b));
                continue;
            }
            var from = a;
            foreach (var (control1, control2, end) in ArcBeziers.Of(Arc2.FromBulge(a, b, bulge), b))
            {
                trace.AddBezier(ToPage(from), ToPage(control1), ToPage(control2), ToPage(end));
                from = end;
            }
        }
        if (path.Closed) trace.CloseFigure();
    }

    private XPoint ToPage(Point2 p) => new(p.X * PdfSharpWriter.Points, (paperHeight - p.Y) * PdfSharpWriter.Points);
}
