using Rodwright.Geometry;

namespace Rodwright.Drawings.Marks;

/// <summary>A line drawn with a pen; arcs stay arcs.</summary>
public sealed record StrokeMark : Mark
{
    /// <summary>A line along <paramref name="path"/>, millimetres of paper.</summary>
    public StrokeMark(Path2 path, Pen pen, Layer layer, string? of = null) : base(layer, of)
    {
        Path = path;
        Pen = pen;
    }

    /// <summary>Where the pen goes.</summary>
    public Path2 Path { get; init; }

    /// <summary>What it draws with.</summary>
    public Pen Pen { get; init; }

    /// <inheritdoc/>
    public override Box2 Bounds => Path.Bounds;

    /// <summary>A straight line.</summary>
    public static StrokeMark Line(Point2 from, Point2 to, Pen pen, Layer layer, string? of = null) =>
        new(Path2.Polyline(from, to), pen, layer, of);

    /// <inheritdoc/>
    public override void Accept(IMarkVisitor visitor) => visitor.Visit(this);
}
