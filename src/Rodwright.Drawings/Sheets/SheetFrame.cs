using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>The border of a sheet, with margins after ISO 5457.</summary>
public static class SheetFrame
{
    /// <summary>Margin at the filing edge, mm.</summary>
    public const double FilingEdge = 20;

    /// <summary>Margin at the other edges, mm.</summary>
    public const double Margin = 10;

    /// <summary>The box inside the margins.</summary>
    public static Box2 BoxOf(PaperSize paper) => new(FilingEdge, Margin, paper.Width - Margin, paper.Height - Margin);

    /// <summary>The border, with a short mark at the middle of each side for lining sheets up.</summary>
    public static IReadOnlyList<Mark> Draw(PaperSize paper)
    {
        var box = BoxOf(paper);
        var middle = box.Centre;
        return
        [
            new StrokeMark(Path2.Rectangle(box.MinX, box.MinY, box.MaxX, box.MaxY), Pens.Frame, Layer.Frame),
            Tick(new(box.MinX, middle.Y), new(-4, 0)),
            Tick(new(box.MaxX, middle.Y), new(4, 0)),
            Tick(new(middle.X, box.MinY), new(0, -4)),
            Tick(new(middle.X, box.MaxY), new(0, 4)),
        ];
    }

    private static StrokeMark Tick(Point2 at, Vector2 outward) => StrokeMark.Line(at, at + outward, Pens.Frame, Layer.Frame);
}
