using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Pieces;

/// <summary>A rail or baluster lying along its board, face side up, with ordinates of its corners; of a rail the places of what stands in it, and both ends large.</summary>
/// <param name="Part">The piece.</param>
/// <param name="Stations">Places along it, on the edge where they are marked.</param>
/// <param name="StationsAbove">Whether that is its upper edge.</param>
/// <param name="HasEnds">Whether the ends are drawn large above it.</param>
internal sealed record LongPieceView(Part Part, IReadOnlyList<Point2> Stations, bool StationsAbove, bool HasEnds)
{
    private const double Between = 30; // least paper between both ends, mm
    private const double Off = 3; // ordinates' lines from the drawing, mm of paper

    private readonly Path2 outline = PieceEnds.OnBoard(Part);

    /// <summary>How much of each end is drawn large, mm of timber.</summary>
    public double Shown { get; init; } = 90;

    /// <summary>The scale of both ends; null takes full size, on small paper half.</summary>
    public Scale? Ends { get; init; }

    /// <summary>The room it needs.</summary>
    public ViewNeed Need(SheetLettering lettering)
    {
        var strip = lettering.OrdinateStrip(6) + Off;
        var ends = HasEnds ? strip + 4 + EndScale(lettering).Factor * Math.Max(Window(false).Height, Window(true).Height) : 0;
        return new(Part.Blank.Length, Part.Blank.Width, strip, HasEnds ? strip : 3, strip + ends, strip);
    }

    /// <summary>The marks; the placement puts the board's left lower corner.</summary>
    public IEnumerable<Mark> Draw(Placement place, SheetLettering lettering)
    {
        var box = place.Map(new Box2(0, 0, Part.Blank.Length, Part.Blank.Width));
        foreach (var mark in Lines(place)) yield return mark;
        var (above, below) = (CornersOf(upper: true), CornersOf(upper: false));
        if (Stations.Count > 0)
        {
            var all = above.Concat(below).Distinct().ToList();
            var stations = Stations.Select(s => new DimensionStop(place.Map(s), s.X)).ToList();
            // The board's left end is the datum of both rows.
            stations.Insert(0, new(place.Map(new Point2(0, StationsAbove ? Part.Blank.Width : 0)), 0));
            foreach (var m in Row(stations, StationsAbove ? box.MaxY + Off : box.MinY - Off, lettering)) yield return m;
            foreach (var m in Row(Stops(place, all, !StationsAbove), StationsAbove ? box.MinY - Off : box.MaxY + Off, lettering)) yield return m;
        }
        else
        {
            foreach (var m in Row(Stops(place, above, true), box.MaxY + Off, lettering)) yield return m;
            foreach (var m in Row(Stops(place, below, false), box.MinY - Off, lettering)) yield return m;
        }
        foreach (var m in RunningDimension.Draw(((double[])[0, Part.Blank.Width]).Select(y => new DimensionStop(place.Map(new Point2(0, y)), y)), new(new(box.MinX - Off, 0), new(0, 1)), lettering.Dimensions)) yield return m;
        if (!HasEnds) yield break;
        var scale = EndScale(lettering);
        var (wide, foot) = (Shown * scale.Factor, box.MaxY + lettering.OrdinateStrip(6) + Off + 4);
        var (left, right) = (Math.Min(box.MinX, box.Centre.X - wide - Between / 2), Math.Max(box.MaxX - wide, box.Centre.X + Between / 2));
        foreach (var m in End(false, scale, new(left, foot), lettering)) yield return m;
        foreach (var m in End(true, scale, new(right, foot), lettering)) yield return m;
        var words = scale == Scale.Full ? "full size" : scale.Told(lettering.Units);
        yield return new TextMark(new((left + wide + right) / 2, foot + lettering.Words), words, lettering.Words, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle);
    }

    private Scale EndScale(SheetLettering lettering) => Ends ?? (lettering.Mark < 6 ? Scale.Usual[1] : Scale.Full);

    private IEnumerable<StrokeMark> Lines(Placement place)
    {
        foreach (var cut in Part.Cuts)
        {
            var shape = cut.Shape.Moved(Part.Blank.OnBoard);
            if (cut.Kind == CutKind.Groove) yield return place.Stroke(shape, Pens.Hidden, Layer.Hidden, Part.Id);
            else if (cut.Kind != CutKind.Cheek || cut.Beneath == 0) yield return place.Stroke(shape, Pens.Visible, Layer.Visible, Part.Id);
        }
        foreach (var station in Stations)
        {
            // A short plumb line from the edge, as it is squared across.
            var plumb = Part.Blank.OnBoard(Part.Blank.Corner + new Vector2(0, 1)) - Part.Blank.OnBoard(Part.Blank.Corner);
            yield return new(Path2.Polyline(place.Map(station), place.Map(station + (StationsAbove ? -1 : 1) * Math.Min(12, Part.Blank.Width / 3) * plumb)), Pens.Construction, Layer.Visible, Part.Id);
        }
        yield return place.Stroke(outline, Pens.Outline, Layer.OutlineToCut, Part.Id);
    }

    /// <summary>One end, large, its window's left lower corner at a point of paper; figures from that end of the board, and up from its lower edge.</summary>
    private IEnumerable<Mark> End(bool right, Scale scale, Point2 at, SheetLettering lettering)
    {
        var window = Window(right);
        var place = new Placement(scale, new(window.MinX, window.MinY), at);
        var paper = place.Map(window);
        yield return new ClipMark(paper.Grown(0.5), Lines(place));
        var corners = outline.Vertices.Select(v => v.At).Where(p => window.Grown(0.01).Holds(Box2.Of([p]))).ToList();
        var along = corners.Select(p => p.X).Append(right ? Part.Blank.Length : 0).Order().Aggregate(new List<double>(), Distinct)
            .Select(x => new DimensionStop(place.Map(new Point2(x, window.MaxY)), right ? Part.Blank.Length - x : x));
        foreach (var m in Row(along, paper.MaxY + Off, lettering)) yield return m;
        var up = corners.Select(p => p.Y).Order().Aggregate(new List<double>(), Distinct).Select(y => new DimensionStop(place.Map(new Point2(right ? window.MaxX : window.MinX, y)), y)).ToList();
        if (up.Count > 0)
            foreach (var m in RunningDimension.Draw(up, new(new(right ? paper.MaxX + Off : paper.MinX - Off, 0), new(0, 1)), lettering.Dimensions)) yield return m;
    }

    /// <summary>What is shown of an end: so far along the board, and as high as the piece is there.</summary>
    private Box2 Window(bool right)
    {
        var (from, to) = right ? (Math.Max(0, Part.Blank.Length - Shown), Part.Blank.Length) : (0, Math.Min(Shown, Part.Blank.Length));
        var inside = ConvexClip.LeftOf(ConvexClip.LeftOf(outline.Flattened(), new(new(from, 0), new(0, -1))), new(new(to, 0), new(0, 1)));
        var box = Box2.Of(inside);
        return new(from, box.MinY, to, box.MaxY);
    }

    private List<double> CornersOf(bool upper) =>
        outline.Vertices.Select(v => v.At).Where(p => p.Y > Part.Blank.Width / 2 == upper).Select(p => p.X).Order().Aggregate(new List<double> { 0 }, Distinct);

    private List<DimensionStop> Stops(Placement place, IEnumerable<double> along, bool above) =>
        [.. along.Order().Aggregate(new List<double>(), Distinct).Select(x => new DimensionStop(place.Map(new Point2(x, above ? Part.Blank.Width : 0)), x))];

    private static IReadOnlyList<Mark> Row(IEnumerable<DimensionStop> stops, double y, SheetLettering lettering) => RunningDimension.Draw(stops, new(new(0, y), new(1, 0)), lettering.Dimensions);

    private static List<double> Distinct(List<double> kept, double x)
    {
        if (kept.Count == 0 || x - kept[^1] > Tolerance.Print) kept.Add(x);
        return kept;
    }
}
