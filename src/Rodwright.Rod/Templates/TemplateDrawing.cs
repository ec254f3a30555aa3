using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;

namespace Rodwright.Rod.Templates;

/// <summary>Gathers the marks of one full-size drawing; all places are millimetres of timber, which at full size are those of the paper.</summary>
internal sealed class TemplateDrawing(Units units)
{
    private const double Offset = 14;
    private DimensionStyle Style { get; } = DimensionStyle.Usual with { Units = units };
    private readonly List<Mark> marks = [];

    public IReadOnlyList<Mark> Marks => marks;

    public void Cut(Path2 path) => marks.Add(new StrokeMark(path, Pens.Outline, Layer.OutlineToCut));

    public void Line(Pen pen, Layer layer, params Point2[] points) => marks.Add(new StrokeMark(Path2.Polyline(points), pen, layer));

    public void Path(Path2 path, Pen pen, Layer layer) => marks.Add(new StrokeMark(path, pen, layer));

    public void Tint(Path2 path) => marks.Add(new FillMark([path], 0.06, Layer.Tint));

    public void Add(IEnumerable<Mark> more) => marks.AddRange(more);

    /// <summary>Words on one line, their middle at a point.</summary>
    public void Words(Point2 at, string text, double height = 5, bool bold = false, Angle turn = default) =>
        marks.Add(new TextMark(at, text, height, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, turn, bold, knockout: true));

    /// <summary>Lines of words below everything drawn so far.</summary>
    public void Notes(string title, string words, double width)
    {
        var box = Mark.BoundsOf(marks);
        var heading = FlowText.Draw(new(box.MinX, box.MinY - 8), width, title, 7, bold: true);
        marks.AddRange(heading.Marks);
        marks.AddRange(FlowText.Draw(new(box.MinX, box.MinY - 8 - heading.Height - 4), width, words, 3.5).Marks);
    }

    /// <summary>A chain below the drawing, between values of x, from points given.</summary>
    public void ChainBelow(double y, params Point2[] points) =>
        marks.AddRange(ChainDimension.Draw(points.Select(p => new DimensionStop(p, p.X)), new(new(0, y - Offset), new(1, 0)), Style));

    /// <summary>A chain to the left of the drawing, between values of y.</summary>
    public void ChainLeft(double x, params Point2[] points) =>
        marks.AddRange(ChainDimension.Draw(points.Select(p => new DimensionStop(p, p.Y)), new(new(x - Offset, 0), new(0, 1)), Style));

    /// <summary>A chain to the right of the drawing, between values of y.</summary>
    public void ChainRight(double x, params Point2[] points) =>
        marks.AddRange(ChainDimension.Draw(points.Select(p => new DimensionStop(p, p.Y)), new(new(x + Offset, 0), new(0, 1)), Style));

    /// <summary>A chain above the drawing, between values of x.</summary>
    public void ChainAbove(double y, params Point2[] points) =>
        marks.AddRange(ChainDimension.Draw(points.Select(p => new DimensionStop(p, p.X)), new(new(0, y + Offset), new(1, 0)), Style));
}
