using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Pieces;

/// <summary>A carriage as it stands under its flight, seen from the side its brackets are on, the steps cut through where it is.</summary>
internal sealed class CarriageView
{
    private const double Off = 3; // ordinates' lines from the drawing, mm of paper
    private const double Around = 60; // of floors and landings past the carriage, mm of timber
    private static readonly Pen Thin = new(0.25, Dash.None);

    private readonly Part part;
    private readonly List<Part> brackets;
    private readonly List<(string Id, Box2 Box)> steps;
    private readonly Kit kit;

    public CarriageView(Stair stair, Part carriage)
    {
        (kit, part) = (stair.Kit, carriage);
        brackets = [.. kit.Joints.Where(j => j.Kind == JointKind.BracketToCarriage && j.Female == part.Id).Select(j => kit.Find(j.Male))];
        var reach = part.FaceSide.Outline.Bounds;
        steps = [.. kit.Parts.Where(p => p.Kind.IsOfStep() && p.Kind is not (PartKind.Block or PartKind.Wedges)).Select(p => (p.Id, Cut(p))).Where(s => s.Item2 is { } b && b.Overlaps(reach.Grown(Around))).Select(s => (s.Id, s.Item2!.Value))];
        Bounds = reach;
        foreach (var bracket in brackets) Bounds = Bounds.With(bracket.FaceSide.Outline.Bounds);
        foreach (var (_, box) in steps) Bounds = Bounds.With(box);
    }

    /// <summary>Everything drawn, in the frame of the carriage's face.</summary>
    public Box2 Bounds { get; }

    /// <summary>Its brackets, up the flight.</summary>
    public IReadOnlyList<Part> Brackets => brackets;

    /// <summary>Which way the flight climbs on the drawing: 1 to the right, -1 to the left.</summary>
    private double Sense => part.Blank.Grain.Y > 0 ? 1 : -1;

    private CarriageEnd Foot => CarriageEnd.Of(part, head: false);

    private CarriageEnd Head => CarriageEnd.Of(part, head: true);

    /// <summary>Where everything level is measured from: the foot's corner that lies lowest down the flight.</summary>
    private double Datum => Sense > 0 ? part.FaceSide.Outline.Bounds.MinX : part.FaceSide.Outline.Bounds.MaxX;

    /// <summary>Where brackets begin, on the carriage's upper edge and on its board.</summary>
    public IReadOnlyList<Point2> Stations => [.. Fronts.Select(x => part.Blank.OnBoard(new(x, UpperEdge(x)))).OrderBy(p => p.X)];

    /// <summary>Plumb fronts of the brackets on the face.</summary>
    private IEnumerable<double> Fronts => brackets.Select(b => Sense > 0 ? b.FaceSide.Outline.Bounds.MinX : b.FaceSide.Outline.Bounds.MaxX);

    /// <summary>The room it needs.</summary>
    public ViewNeed Need(SheetLettering lettering)
    {
        var strip = lettering.OrdinateStrip(6) + Off;
        return new(Bounds.Width, Bounds.Height, strip, 3, 1, strip);
    }

    /// <summary>The marks; the placement puts the left lower corner of <see cref="Bounds"/>.</summary>
    public IEnumerable<Mark> Draw(Placement corner, SheetLettering lettering)
    {
        var place = new Placement(corner.Scale, new(Bounds.MinX, Bounds.MinY), corner.PaperOrigin);
        var box = place.Map(Bounds);
        foreach (var (id, step) in steps) yield return place.Stroke(Path2.Rectangle(step.MinX, step.MinY, step.MaxX, step.MaxY), Thin, Layer.Visible, id);
        if (Foot.IsLevel)
        {
            var level = place.Map(new Point2(0, Foot.At.Lower.Y)).Y;
            yield return StrokeMark.Line(new(box.MinX, level), new(box.MaxX, level), Thin, Layer.Site);
        }
        yield return place.Stroke(part.FaceSide.Outline, Pens.Outline, Layer.OutlineToCut, part.Id);
        foreach (var bracket in brackets)
        {
            // Its outline lies on the carriage's own face frame, only further out.
            var outline = OnFace(bracket);
            yield return new FillMark([place.Map(outline)], 0, Layer.Visible, bracket.Id);
            yield return new ClipMark(place.Map(outline.Bounds), [place.Stroke(Path2.Polyline(UpperLine.From, UpperLine.To), Pens.Hidden, Layer.Hidden, part.Id)]);
            yield return place.Stroke(outline, Pens.Outline, Layer.OutlineToCut, bracket.Id);
            if (MarkIn(place, outline, bracket, lettering) is { } mark) yield return mark;
        }
        var along = new[] { Foot.At.Upper.X, Foot.At.Lower.X, Head.At.Upper.X }.Concat(Fronts).Append(Datum).Select(x => Sense * (x - Datum)).Order().Aggregate(new List<double>(), Distinct);
        foreach (var m in RunningDimension.Draw(along.Select(x => new DimensionStop(place.Map(new Point2(Datum + Sense * x, Bounds.MinY)), x)), new(new(0, box.MinY - Off), new(1, 0)), lettering.Dimensions)) yield return m;
        var floor = part.FaceSide.Outline.Bounds.MinY;
        var up = new[] { Foot.At.Upper.Y, Foot.At.Lower.Y, Head.At.Upper.Y, Head.At.Lower.Y }.Concat(brackets.Select(b => OnFace(b).Bounds.MaxY)).Select(y => y - floor).Order().Aggregate(new List<double>(), Distinct);
        foreach (var m in RunningDimension.Draw(up.Select(y => new DimensionStop(place.Map(new Point2(Bounds.MinX, floor + y)), y)), new(new(box.MinX - Off, 0), new(0, 1)), lettering.Dimensions)) yield return m;
    }

    /// <summary>A bracket's mark in its upper corner down the flight, where the carriage's edge does not run; null where it would not fit.</summary>
    private TextMark? MarkIn(Placement place, Path2 outline, Part bracket, SheetLettering lettering)
    {
        const double clear = 1.5;
        var (room, low) = (place.Map(outline.Bounds), outline.Vertices.Select(v => place.Map(v.At)).ToList());
        var rise = low.Where(p => Sense * p.X > Sense * room.Centre.X).Min(p => p.Y) - room.MinY;
        foreach (var height in new[] { lettering.Figures, 2.5, 1.8 }.Where(h => h <= lettering.Figures))
        {
            var width = Lettering.Width(bracket.Mark, height, bold: true);
            // The lower edge climbs: under the end of the mark it must still be below it.
            if (width + 2 * clear > room.Width || room.MinY + rise * (width + clear) / room.Width > room.MaxY - 2 * clear - height) continue;
            return new(new(Sense > 0 ? room.MinX + clear : room.MaxX - clear, room.MaxY - clear - height), bracket.Mark, height, Layer.Lettering, Sense > 0 ? HorizontalAnchor.Start : HorizontalAnchor.End, bold: true, knockout: true, of: bracket.Id);
        }
        return null;
    }

    private (Point2 From, Point2 To) UpperLine => (Foot.At.Upper, Head.At.Upper);

    private double UpperEdge(double x) => UpperLine.From.Y + (UpperLine.To.Y - UpperLine.From.Y) * (x - UpperLine.From.X) / (UpperLine.To.X - UpperLine.From.X);

    private Path2 OnFace(Part bracket) => bracket.FaceSide.Outline.Moved(p => part.FaceSide.Frame.ToLocal(bracket.FaceSide.Frame.ToWorld(p)).Face);

    /// <summary>What the plane down the middle of the carriage cuts of a piece, in its frame; null for none.</summary>
    private Box2? Cut(Part piece)
    {
        var (frame, middle) = (part.FaceSide.Frame, -part.FaceSide.Thickness / 2);
        var ring = Footprint.Of(piece).Flattened().Select(p => frame.ToLocal(new(p.X, p.Y, 0))).ToList();
        var across = new List<double>();
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++)
        {
            var (a, b) = (ring[i], ring[j]);
            if (a.W <= middle == b.W <= middle) continue;
            across.Add(a.Face.X + (b.Face.X - a.Face.X) * (middle - a.W) / (b.W - a.W));
        }
        if (across.Count < 2) return null;
        var face = piece.FaceSide;
        var heights = face.Outline.Vertices.SelectMany(v => new[] { face.Frame.ToWorld(v.At).Z, face.Frame.ToWorld(v.At, -face.Thickness).Z }).Select(z => z - frame.Origin.Z).ToList();
        return new(across.Min(), heights.Min(), across.Max(), heights.Max());
    }

    private static List<double> Distinct(List<double> kept, double x)
    {
        if (kept.Count == 0 || x - kept[^1] > Tolerance.Print) kept.Add(x);
        return kept;
    }
}
