using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Letters = Rodwright.Drawings.Fonts.Lettering;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>A picture in the making: the ground, cut off at the edges; dimensions over it; figures last, each where nothing is written yet.</summary>
internal sealed class Sketch
{
    public const double Width = 72;
    public const double Height = 50;
    public const double Lettering = 3.5;
    public const string Measured = "measured";
    public const string Counted = "counted";

    private const double SlashHalf = 1.3;
    private const double Overrun = 1.6;
    private static readonly Box2 Paper = new(0, 0, Width, Height);

    private readonly List<Mark> ground = [];
    private readonly List<Mark> over = [];
    private readonly List<TextMark> words = [];
    private readonly List<Box2> kept = [];

    /// <summary>A picture of a box of timber.</summary>
    /// <param name="seen">What must be seen, mm of timber.</param>
    /// <param name="left">Paper to leave for figures, mm.</param>
    public Sketch(Box2 seen, double left = 6, double bottom = 5, double right = 6, double top = 5)
    {
        var room = new Box2(left, bottom, Width - right, Height - top);
        var ratio = Math.Max(seen.Width / room.Width, seen.Height / room.Height);
        Place = Placement.Centred(seen, room, Scale.OneTo(Math.Clamp(ratio, 1, 1000)));
    }

    public Placement Place { get; }

    /// <summary>The unit of its lengths.</summary>
    public Units Units { get; init; } = Units.Millimetres;

    public Picture Picture => new(Width, Height, [new ClipMark(Paper, ground), .. over, .. words]);

    /// <summary>Something behind the dimensions, mm of paper.</summary>
    public void Draw(Mark mark) => ground.Add(mark);

    /// <summary>A line behind the dimensions, mm of timber.</summary>
    public void Draw(Path2 path, Pen pen, Layer layer) => ground.Add(Place.Stroke(path, pen, layer));

    /// <summary>A dimension between two points of timber, with its figure in the line where there is room, else beside it.</summary>
    /// <param name="offset">How far to the left of the line between them it stands, mm of paper.</param>
    /// <param name="figure">The figure; the length when null.</param>
    public void Span(Point2 from, Point2 to, double offset = 0, string? figure = null)
    {
        var (a, b) = (Place.Map(from), Place.Map(to));
        var along = (b - a).Unit;
        var shift = offset * along.Left;
        if (Math.Abs(offset) > 0.5)
        {
            var past = (Math.Abs(offset) + Overrun) / Math.Abs(offset);
            over.Add(StrokeMark.Line(a, Held(a + past * shift), PicturePens.Extension, Layer.Dimension));
            over.Add(StrokeMark.Line(b, Held(b + past * shift), PicturePens.Extension, Layer.Dimension));
        }
        var (p, q) = (a + shift, b + shift);
        Stroke(p, q);
        Slash(p, along);
        Slash(q, along);
        Figure(p, q, figure ?? Print(from.DistanceTo(to)), offset < 0 ? along.Right : along.Left);
    }

    /// <summary>One piece of a measured line, mm of timber: no figure, no ends.</summary>
    public void Piece(Point2 from, Point2 to) =>
        over.Add(StrokeMark.Line(Place.Map(from), Place.Map(to), PicturePens.OnFace, Layer.Dimension, Measured));

    /// <summary>An end of a measured line, mm of timber.</summary>
    public void End(Point2 at, Vector2 along) => Slash(Place.Map(at), along.Unit);

    /// <summary>An angle at a point of timber from level up to a direction, with its figure.</summary>
    public void Pitch(Point2 apex, Vector2 direction, double radius)
    {
        var at = Place.Map(apex);
        var (start, end) = (at + new Vector2(radius, 0), at + radius * direction.Unit);
        over.Add(new StrokeMark(new([new(start, Angle.Tan(direction.Direction / 4)), new(end)], false), PicturePens.Measured, Layer.Dimension, Measured));
        var text = Number.Print(direction.Direction * (180 / Math.PI), 2) + "°";
        var middle = Vector2.At(direction.Direction / 2);
        Write(text, [at + (radius + 1.2 + Letters.Width(text, Lettering) / 2) * middle, at + (radius + 12) * middle]);
    }

    /// <summary>A thing counted, mm of timber.</summary>
    public void Dot(Point2 at) => over.Add(new FillMark([Path2.Circle(Place.Map(at), 0.75)], 1, Layer.Dimension, Counted));

    /// <summary>A figure led to a point, written on one side of it as near as there is room.</summary>
    public void Led(Point2 tip, Vector2 side, string text)
    {
        var at = Place.Map(tip);
        var unit = side.Unit;
        var half = HalfExtent(text, unit);
        var placed = Write(text, Enumerable.Range(0, 12).SelectMany(i => new[] { 0.0, 0.5, -0.5, 1, -1 }.Select(turn => Turned(3.5 + 1.5 * i, turn))));
        var reach = placed.At - at;
        if (reach.Length > half + 1) over.Add(StrokeMark.Line(at, placed.At, PicturePens.Extension, Layer.Dimension));

        Point2 Turned(double out1, double turn)
        {
            var way = Vector2.At(unit.Direction + turn);
            return at + (out1 + HalfExtent(text, way)) * way;
        }
    }

    /// <summary>Writes a figure at the first place of paper where it lies within the picture, clear of other figures and of measured lines.</summary>
    public TextMark Write(string text, IEnumerable<Point2> places)
    {
        TextMark? best = null;
        foreach (var place in places)
        {
            var word = new TextMark(place, text, Lettering, Layer.Dimension, HorizontalAnchor.Middle, VerticalAnchor.Middle, knockout: true);
            best ??= word;
            if (!Paper.Grown(-0.3).Holds(word.Bounds) || words.Exists(w => w.Bounds.Overlaps(word.Bounds))) continue;
            best = word;
            break;
        }
        var box = best!.Bounds;
        var back = new Vector2(Math.Max(0, 0.3 - box.MinX) - Math.Max(0, box.MaxX - Width + 0.3), Math.Max(0, 0.3 - box.MinY) - Math.Max(0, box.MaxY - Height + 0.3));
        best = best with { At = best.At + back };
        words.Add(best);
        return best;
    }

    /// <summary>A length as a figure.</summary>
    public string Print(double value) => Units.Print(value, 2);

    private void Figure(Point2 p, Point2 q, string text, Vector2 side)
    {
        var along = (q - p).Unit;
        var middle = p.Towards(q, 0.5);
        var (run, off) = (2 * HalfExtent(text, along), HalfExtent(text, side) + 1.6);
        var places = new List<Point2>();
        if (run + 5 <= p.DistanceTo(q)) places.Add(middle);
        places.AddRange([middle + off * side, middle - off * side, q + (run / 2 + 2.5) * along, p - (run / 2 + 2.5) * along, middle + 2 * off * side, middle - 2 * off * side]);
        Write(text, places);
    }

    /// <summary>How far a figure reaches from its middle along a direction, its white ground included.</summary>
    private static double HalfExtent(string text, Vector2 way) =>
        Math.Abs(way.X) * (Letters.Width(text, Lettering) / 2 + Lettering / 4) + Math.Abs(way.Y) * (Lettering / 2 + Lettering / 4);

    private void Stroke(Point2 p, Point2 q) => over.Add(StrokeMark.Line(p, q, PicturePens.Measured, Layer.Dimension, Measured));

    private void Slash(Point2 at, Vector2 along)
    {
        var lean = (along + along.Left).Unit;
        over.Add(StrokeMark.Line(Held(at - SlashHalf * lean), Held(at + SlashHalf * lean), PicturePens.Slash, Layer.Dimension));
    }

    private static Point2 Held(Point2 p) => new(Math.Clamp(p.X, 0, Width), Math.Clamp(p.Y, 0, Height));
}
