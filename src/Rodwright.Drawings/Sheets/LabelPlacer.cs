using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>
/// Finds room for labels, one after another: each takes the first free of eight places round its point, then of rings further out with a
/// thin line back. Greedy, so the order of asking is the order of importance. Not for use from several threads.
/// </summary>
public sealed class LabelPlacer
{
    private const double Apart = 0.6; // least clear space round a label, mm
    private const int Rings = 7;

    private static readonly Vector2[] Ways =
    [
        new(1, 1), new(-1, 1), new(1, -1), new(-1, -1), new(1, 0), new(-1, 0), new(0, 1), new(0, -1),
    ];

    private readonly Box2 room;
    private readonly List<TurnedBox> taken = [];
    private readonly List<(Point2 A, Point2 B, Box2 Box)> lines = [];

    /// <summary>A placer for one view or sheet.</summary>
    /// <param name="room">Labels stay inside this box, mm of paper.</param>
    public LabelPlacer(Box2 room) => this.room = room;

    /// <summary>Keeps labels off a box.</summary>
    public void Avoid(Box2 box) => taken.Add(TurnedBox.Of(box));

    /// <summary>Keeps labels off a line.</summary>
    public void Avoid(Path2 path)
    {
        var points = path.Flattened(0.1);
        for (var i = 0; i + 1 < points.Count + (path.Closed ? 1 : 0); i++) AddLine(points[i], points[(i + 1) % points.Count]);
    }

    /// <summary>Keeps labels off the lines and lettering among these marks; tints are no hindrance.</summary>
    public void Avoid(IEnumerable<Mark> marks)
    {
        foreach (var (mark, _) in FlatMarks.Of(marks))
        {
            if (mark is StrokeMark stroke) Avoid(stroke.Path);
            else if (mark is TextMark text) taken.Add(TurnedBox.Of(text));
        }
    }

    /// <summary>Places a label near a point and remembers it; null when every place tried was taken.</summary>
    /// <param name="text">One line.</param>
    /// <param name="near">The point spoken of, mm of paper.</param>
    /// <param name="height">Of the capitals, mm.</param>
    /// <param name="layer">What it means; lettering when null.</param>
    /// <param name="gap">Clear space between the point and the nearest place, mm.</param>
    /// <param name="bold">Heavier letters.</param>
    /// <param name="of">Id of the thing spoken of.</param>
    public PlacedLabel? Place(
        string text, Point2 near, double height = 3.5, Layer? layer = null, double gap = 1.5, bool bold = false, string? of = null)
    {
        var half = new Vector2(Lettering.Width(text, height, bold) / 2, height / 2);
        for (var ring = 0; ring < Rings; ring++)
        {
            var away = gap + ring * (height + 1);
            foreach (var way in Ways)
            {
                var middle = near + new Vector2(way.X * (away + half.X), way.Y * (away + half.Y));
                var mark = new TextMark(
                    middle, text, height, layer ?? Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, bold: bold, of: of);
                var box = TurnedBox.Of(mark, Apart);
                if (!room.Holds(box.Bounds) || !IsFree(box)) continue;
                var lead = ring < 2 ? null : Lead(near, mark.Bounds, of);
                if (lead is not null && IsLeadBlocked(lead)) continue;
                taken.Add(TurnedBox.Of(mark));
                if (lead is not null) Avoid(lead.Path);
                return new(mark, lead);
            }
        }
        return null;
    }

    private static StrokeMark? Lead(Point2 from, Box2 box, string? of)
    {
        var end = new Point2(
            Math.Clamp(from.X, box.MinX - Apart, box.MaxX + Apart), Math.Clamp(from.Y, box.MinY - Apart, box.MaxY + Apart));
        var way = end - from;
        return way.Length < 1.5 ? null : StrokeMark.Line(from + 0.8 * way.Unit, end, Pens.Dimension, Layer.Dimension, of);
    }

    private void AddLine(Point2 a, Point2 b) => lines.Add((a, b, Box2.Of([a, b])));

    private bool IsFree(in TurnedBox box)
    {
        foreach (var other in taken)
        {
            if (box.Overlaps(other)) return false;
        }
        var bounds = box.Bounds;
        foreach (var (a, b, lineBox) in lines)
        {
            if (lineBox.MaxX < bounds.MinX || lineBox.MinX > bounds.MaxX || lineBox.MaxY < bounds.MinY || lineBox.MinY > bounds.MaxY) continue;
            if (box.IsCrossedBy(a, b)) return false;
        }
        return true;
    }

    // A lead may cross lines of the drawing, as leads do, but no lettering.
    private bool IsLeadBlocked(StrokeMark lead)
    {
        var (a, b, _) = lead.Path.Edge(0);
        foreach (var other in taken)
        {
            if (other.IsCrossedBy(a, b)) return true;
        }
        return false;
    }
}
