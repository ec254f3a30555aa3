using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>Turns marks into DXF entities.</summary>
internal sealed class SheetToDxf : IMarkVisitor
{
    private static readonly Dictionary<Layer, DxfLayer> Layers = Layer.All.ToDictionary(l => l, Of);
    private readonly List<DxfEntity> entities = [];
    private Box2? window;

    public static IReadOnlyList<DxfEntity> Entities(IEnumerable<Mark> marks)
    {
        var visitor = new SheetToDxf();
        foreach (var mark in marks) mark.Accept(visitor);
        return visitor.entities;
    }

    public void Visit(StrokeMark mark)
    {
        var layer = Layers[mark.Layer];
        if (window is { } w && !w.Holds(mark.Bounds))
        {
            foreach (var piece in PathClip.Inside(mark.Path, w)) entities.Add(new DxfPath(layer, piece, mark.Pen));
        }
        else entities.Add(new DxfPath(layer, mark.Path, mark.Pen));
    }

    public void Visit(FillMark mark)
    {
        if (mark.Tint == 0) return;
        var layer = Layers[mark.Layer];
        if (window is { } w && !w.Holds(mark.Bounds))
        {
            var pieces = mark.Outlines.Select(o => PathClip.Filled(o, w)).OfType<Path2>().ToList();
            if (pieces.Count > 0) entities.Add(new DxfFill(layer, pieces, mark.Tint));
        }
        else entities.Add(new DxfFill(layer, mark.Outlines, mark.Tint));
    }

    public void Visit(TextMark mark)
    {
        if (mark.Text.Length == 0) return;
        // Lettering cannot be cut: what shows its middle shows whole.
        if (window is { } w && !w.Holds(new Box2(mark.Bounds.Centre.X, mark.Bounds.Centre.Y, mark.Bounds.Centre.X, mark.Bounds.Centre.Y))) return;
        entities.Add(new DxfText(Layers[mark.Layer], mark));
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

    private static DxfLayer Of(Layer layer)
    {
        var (colour, pen) = layer switch
        {
            _ when layer == Layer.OutlineToCut => (7, Pens.Outline),
            _ when layer == Layer.Visible => (7, Pens.Visible),
            _ when layer == Layer.Hidden => (8, Pens.Hidden),
            _ when layer == Layer.Nosing => (5, Pens.Nosing),
            _ when layer == Layer.Centre => (4, Pens.Centre),
            _ when layer == Layer.Construction => (9, Pens.Construction),
            _ when layer == Layer.Dimension => (3, Pens.Dimension),
            _ when layer == Layer.Housing => (1, Pens.Visible),
            _ when layer == Layer.Mortice => (6, Pens.Visible),
            _ when layer == Layer.Bore => (2, Pens.Visible),
            _ when layer == Layer.Waste => (8, Pens.Hatch),
            _ when layer == Layer.Fault => (1, Pens.Visible),
            _ => (7, Pens.Dimension),
        };
        return new(layer.Id.ToUpperInvariant(), colour, pen.Width, pen.Dash);
    }
}
