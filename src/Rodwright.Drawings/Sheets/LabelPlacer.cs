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
    private readonly List<TurnedBox> takenAround = []; // those near the label that is being placed
    private readonly List<(Point2 A, Point2 B, Box2 Box)> linesAround = [];

    /// <summary>A placer for one view or sheet.</summary>
    /// <param name="room">Labels stay inside this box, mm of paper.</param>
    public LabelPlacer(Box2 room) => this.room = room;

    /// <summary>Keeps labels off a box.</summary>
    public void Avoid(Box2 box) => taken.Add(TurnedBox.Of(box));

    /// <summary>Keeps labels off a line.</summary>
    public void Avoid(Path2 path)
    {
        for (var i = 0; i < path.EdgeCount; i++)
        {
            var (a, b, bulge) = path.Edge(i);
            if (bulge == 0)
            {
                AddLine(a, b);
                continue;
            }
            var points = new Path2([new(a, bulge), new(b)], false).Flattened(0.1);
            for (var k = 0; k + 1 < points.Count; k++) AddLine(points[k], points[k + 1]);
        }
    }

    /// <summary>Keeps labels off the lines and lettering among these marks; tints are no hindrance.</summary>
    public void Avoid(IEnumerable<Mark> marks)
    {
        foreach (var (mark, _) in FlatMarks.Of(marks)) Avoid(mark);
    }

    /// <summary>Keeps labels off a line or a text; anything else is no hindrance.</summary>
    public void Avoid(Mark mark)
    {
        if (mark is StrokeMark stroke) Avoid(stroke.Path);
        else if (mark is TextMark text) taken.Add(TurnedBox.Of(text));
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
        var label = new TextMark(Point2.Origin, text, height, layer ?? Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, bold: bold, of: of);
        // A hair smaller: what it is not free of, the label itself is not either.
        var shape = TurnedBox.Of(label, Apart - 1e-6);
        Gather(near, gap + (Rings - 1) * (height + 1), half, shape.Bounds);
        for (var ring = 0; ring < Rings; ring++)
        {
            var away = gap + ring * (height + 1);
            foreach (var way in Ways)
            {
                var middle = near + new Vector2(way.X * (away + half.X), way.Y * (away + half.Y));
                if (!IsFree(shape.Moved(middle - Point2.Origin))) continue;
                var mark = label with { At = middle };
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

    private void AddLine(Point2 a, Point2 b) => lines.Add((a, b, Box2.Empty.With(a).With(b)));

    /// <summary>Gathers what stands where any of a label's places could be: the rest need not be asked about each of them.</summary>
    private void Gather(Point2 near, double away, Vector2 half, Box2 shape)
    {
        var (x, y) = (away + half.X, away + half.Y);
        var reach = new Box2(near.X - x + shape.MinX, near.Y - y + shape.MinY, near.X + x + shape.MaxX, near.Y + y + shape.MaxY).Grown(1);
        takenAround.Clear();
        linesAround.Clear();
        foreach (var box in taken) if (Meets(box.Bounds, reach)) takenAround.Add(box);
        foreach (var line in lines) if (Meets(line.Box, reach)) linesAround.Add(line);

        static bool Meets(Box2 a, Box2 b) => a.MaxX >= b.MinX && a.MinX <= b.MaxX && a.MaxY >= b.MinY && a.MinY <= b.MaxY;
    }

    private bool IsFree(in TurnedBox box)
    {
        foreach (var other in takenAround)
        {
            if (box.Overlaps(other)) return false;
        }
        var bounds = box.Bounds;
        foreach (var (a, b, lineBox) in linesAround)
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
        foreach (var other in takenAround)
        {
            if (other.IsCrossedBy(a, b)) return true;
        }
        return false;
    }
}
