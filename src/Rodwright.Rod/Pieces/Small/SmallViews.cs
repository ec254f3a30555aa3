using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Pieces.Small;

/// <summary>Two views of a small piece with their ordinates: a face with the edge below it, or an end with the side beside it.</summary>
internal static class SmallViews
{
    private const double Off = 3; // ordinates' lines from the drawing, mm of paper

    /// <summary>Paper between face and edge: the word for the grain stands there.</summary>
    private static double Between(SheetLettering lettering) => Math.Max(lettering.Words, lettering.Figures) * 1.5 + 3;

    private static double Strip(SheetLettering lettering, params IEnumerable<double> figures) => lettering.OrdinateStrip(figures.Select(f => (f, ""))) + Off;

    /// <summary>Room for a face of a size with its edge below it.</summary>
    public static ViewNeed FaceNeed(Box2 face, double thickness, SheetLettering lettering) =>
        new(face.Width, face.Height + thickness, Strip(lettering, face.Height, thickness), Strip(lettering, face.Height), lettering.Figures + Between(lettering), Strip(lettering, face.Width));

    /// <summary>A face with its edge below it, the grain along both; figures along from the left end, and at each end up from the lower edge.</summary>
    public static IEnumerable<Mark> Face(Placement place, Path2 face, double thickness, SheetLettering lettering, string of)
    {
        var box = face.Bounds;
        var edge = place.Map(new Box2(0, 0, box.Width, thickness));
        var above = new Placement(place.Scale, new(box.MinX, box.MinY), new(edge.MinX, edge.MaxY + Between(lettering)));
        yield return above.Stroke(face, Pens.Outline, Layer.OutlineToCut, of);
        yield return place.Stroke(Path2.Rectangle(0, 0, box.Width, thickness), Pens.Outline, Layer.OutlineToCut, of);
        yield return new TextMark(new(edge.Centre.X, edge.MaxY + Between(lettering) / 2), "↔ grain", lettering.Words, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle);
        var corners = face.Vertices.Select(v => v.At).ToList();
        foreach (var m in Row(corners.Select(p => p.X).Order().Aggregate(new List<double>(), Distinct).Select(x => new DimensionStop(place.Map(new Point2(x - box.MinX, 0)), x - box.MinX)), new(new(0, edge.MinY - Off), new(1, 0)), lettering)) yield return m;
        var view = above.Map(box);
        foreach (var right in (bool[])[false, true])
        {
            var end = corners.Where(p => p.X > box.Centre.X == right).ToList();
            var stops = end.Select(p => p.Y).Append(box.MinY).Order().Aggregate(new List<double>(), Distinct)
                .Select(y => new DimensionStop(above.Map(new Point2(right ? end.Max(p => p.X) : end.Min(p => p.X), y)), y - box.MinY));
            foreach (var m in Row(stops, new(new(right ? view.MaxX + Off : view.MinX - Off, 0), new(0, 1)), lettering)) yield return m;
        }
        foreach (var m in Row(((double[])[0, thickness]).Select(y => new DimensionStop(place.Map(new Point2(0, y)), y)), new(new(edge.MinX - Off, 0), new(0, 1)), lettering)) yield return m;
    }

    /// <summary>Room for an end with a side of a length beside it.</summary>
    public static ViewNeed EndNeed(Box2 end, double length, SheetLettering lettering) =>
        new(end.Width + length, end.Height, Strip(lettering, end.Height), Beside + 3, lettering.Figures, Strip(lettering, end.Width, length));

    private const double Beside = 10; // between an end and the side, mm of paper

    /// <summary>An end with a side beside it, the grain along the side; figures from the left and from below.</summary>
    public static IEnumerable<Mark> End(Placement place, Path2 end, double length, SheetLettering lettering, string of)
    {
        var box = end.Bounds;
        var left = new Placement(place.Scale, new(box.MinX, box.MinY), place.PaperOrigin);
        var view = left.Map(box);
        var right = new Placement(place.Scale, Point2.Origin, new(view.MaxX + Beside, view.MinY));
        var side = right.Map(new Box2(0, 0, length, box.Height));
        yield return left.Stroke(end, Pens.Outline, Layer.OutlineToCut, of);
        yield return right.Stroke(Path2.Rectangle(0, 0, length, box.Height), Pens.Outline, Layer.OutlineToCut, of);
        if (end.Vertices.Any(v => v.Bulge != 0))
        {
            yield return StrokeMark.Line(new(view.MinX - 2, view.Centre.Y), new(view.MaxX + 2, view.Centre.Y), Pens.Centre, Layer.Centre);
            yield return StrokeMark.Line(new(view.Centre.X, view.MinY - 2), new(view.Centre.X, view.MaxY + 2), Pens.Centre, Layer.Centre);
        }
        var (text, height) = TextFit.Within("↔ grain", side.Width - 4, lettering.Words);
        if (side.Height > 2 * height) yield return new TextMark(side.Centre, text, height, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle);
        foreach (var m in Row(((double[])[0, box.Width]).Select(x => new DimensionStop(left.Map(new Point2(box.MinX + x, box.MinY)), x)), new(new(0, view.MinY - Off), new(1, 0)), lettering)) yield return m;
        foreach (var m in Row(((double[])[0, length]).Select(x => new DimensionStop(right.Map(new Point2(x, 0)), x)), new(new(0, side.MinY - Off), new(1, 0)), lettering)) yield return m;
        foreach (var m in Row(((double[])[0, box.Height]).Select(y => new DimensionStop(left.Map(new Point2(box.MinX, box.MinY + y)), y)), new(new(view.MinX - Off, 0), new(0, 1)), lettering)) yield return m;
    }

    private static IReadOnlyList<Mark> Row(IEnumerable<DimensionStop> stops, Line2 line, SheetLettering lettering) => RunningDimension.Draw(stops, line, lettering.Dimensions);

    private static List<double> Distinct(List<double> kept, double x)
    {
        if (kept.Count == 0 || x - kept[^1] > Tolerance.Print) kept.Add(x);
        return kept;
    }
}
