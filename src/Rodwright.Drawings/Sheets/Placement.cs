using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>
/// The one carrying of a drawing onto paper: millimetres of timber, turned, scaled and set down at a point of the sheet. Lines, points and
/// tints are carried; pens, dashes and lettering keep their size. Never mirrors.
/// </summary>
public sealed class Placement
{
    private readonly Vector2 x;

    /// <summary>A placement.</summary>
    /// <param name="scale">Timber to paper.</param>
    /// <param name="modelOrigin">A point of the drawing, mm of timber.</param>
    /// <param name="paperOrigin">Where that point lands, mm of paper.</param>
    /// <param name="turn">Anticlockwise turn of the drawing on the paper.</param>
    public Placement(Scale scale, Point2 modelOrigin, Point2 paperOrigin, Angle turn = default)
    {
        Scale = scale;
        ModelOrigin = modelOrigin;
        PaperOrigin = paperOrigin;
        Turn = turn;
        x = turn.Radians == 0 ? new(scale.Factor, 0) : scale.Factor * Vector2.At(turn.Radians);
    }

    /// <summary>Timber to paper.</summary>
    public Scale Scale { get; }

    /// <summary>The point of the drawing that lands on <see cref="PaperOrigin"/>.</summary>
    public Point2 ModelOrigin { get; }

    /// <summary>Where it lands.</summary>
    public Point2 PaperOrigin { get; }

    /// <summary>Anticlockwise turn.</summary>
    public Angle Turn { get; }

    /// <summary>The placement that sets the middle of a box of timber on the middle of a box of paper.</summary>
    public static Placement Centred(Box2 model, Box2 paper, Scale scale, Angle turn = default) => new(scale, model.Centre, paper.Centre, turn);

    /// <summary>Full size, moved on the paper only.</summary>
    public static Placement Shift(Vector2 by) => new(Scale.Full, Point2.Origin, Point2.Origin + by);

    /// <summary>A point on paper.</summary>
    public Point2 Map(Point2 p) => PaperOrigin + Map(p - ModelOrigin);

    /// <summary>A displacement on paper.</summary>
    public Vector2 Map(Vector2 v) => new(v.X * x.X - v.Y * x.Y, v.X * x.Y + v.Y * x.X);

    /// <summary>A length on paper, mm.</summary>
    public double Map(double length) => length * Scale.Factor;

    /// <summary>A path on paper; arcs stay arcs.</summary>
    public Path2 Map(Path2 path) => path.Moved(Map);

    /// <summary>The box on paper round the four corners of a box of timber.</summary>
    public Box2 Map(Box2 box) => box.IsEmpty
        ? box
        : Box2.Of([Map(new Point2(box.MinX, box.MinY)), Map(new Point2(box.MaxX, box.MinY)), Map(new Point2(box.MaxX, box.MaxY)), Map(new Point2(box.MinX, box.MaxY))]);

    /// <summary>The point of the drawing under a point of the paper.</summary>
    public Point2 Back(Point2 paper)
    {
        var d = paper - PaperOrigin;
        var k = Scale.Ratio * Scale.Ratio;
        return ModelOrigin + new Vector2(k * (d.X * x.X + d.Y * x.Y), k * (d.Y * x.X - d.X * x.Y));
    }

    /// <summary>A line drawn on paper along a path of timber.</summary>
    public StrokeMark Stroke(Path2 path, Pen pen, Layer layer, string? of = null) => new(Map(path), pen, layer, of);

    /// <summary>Marks whose places are millimetres of timber, carried onto paper. Lettering keeps its height and turns with the drawing.</summary>
    /// <exception cref="ArgumentException">A window (<see cref="ClipMark"/>) would be turned by other than quarter turns.</exception>
    public Mark Map(Mark mark)
    {
        var carrier = new MarkCarrier(this);
        mark.Accept(carrier);
        return carrier.Carried;
    }
}
