using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Rod.Views;

/// <summary>Draws the room in plan: walls with their doors and windows, the well's edge, slopes, and the stair as far as it needs to be known.</summary>
public static class RoomMarks
{
    private const double Band = 2.6; // depth of the hatched wall, mm of paper
    private static readonly Pen Thin = new(0.18, Dash.None);
    private static readonly Pen Edge = new(0.25, Dash.Broken);
    private static readonly Pen Slope = new(0.18, Dash.LongDot);

    /// <summary>Walls, doors and windows.</summary>
    public static IReadOnlyList<Mark> Walls(RoomView view, Placement place) => [.. view.Walls.SelectMany(w => Wall(w, place))];

    /// <summary>The edge of the well, broken: it lies above.</summary>
    public static IReadOnlyList<Mark> Well(RoomView view, Placement place) => view.Well is { } well ? [place.Stroke(well, Edge, Layer.Site, ThingId.Well)] : [];

    /// <summary>Nosings and apron linings along the well's edge.</summary>
    public static IReadOnlyList<Mark> Linings(RoomView view, Placement place) =>
        [.. view.Linings.Select(p => new StrokeMark(place.Map(Footprint.Of(p)), Thin, Layer.Visible, p.Id))];

    /// <summary>Where each slope is as high as the headroom wanted.</summary>
    public static IReadOnlyList<Mark> Slopes(RoomView view, Placement place, Box2 within) =>
    [
        .. (view.Report.Headroom?.Above ?? []).Select(o => view.Contour(o, view.Report.HeadroomWanted ?? 2000, within)).OfType<(Point2 A, Point2 B)>()
            .Select(c => place.Stroke(Path2.Polyline(c.A, c.B), Slope, Layer.Site, ThingId.Ceiling)),
    ];

    /// <summary>The stair in thin lines: boards, newels, risers, the way up.</summary>
    public static IReadOnlyList<Mark> Stair(RoomView view, Placement place)
    {
        var plan = view.Stair.Plan;
        var marks = new List<Mark>();
        foreach (var riser in plan.RiserLines) marks.Add(place.Stroke(plan.FaceOf(riser), Thin, Layer.Visible, ThingId.Riser(riser.Number)));
        foreach (var part in view.Stair.Kit.Parts.Where(p => p.Kind is Joinery.Parts.PartKind.WallString or Joinery.Parts.PartKind.NewelString or Joinery.Parts.PartKind.Newel))
        {
            var outline = place.Map(Footprint.Of(part));
            marks.Add(new FillMark([outline], 0, Layer.Visible, part.Id));
            marks.Add(new StrokeMark(outline, new(0.25, Dash.None), Layer.Visible, part.Id));
        }
        var line = place.Map(plan.WalkingLine);
        var (tip, along) = PathEnd.Of(line);
        marks.Add(new StrokeMark(line, Pens.Centre, Layer.Centre, ThingId.WalkingLine));
        marks.Add(new StrokeMark(Path2.Polyline(tip - 3 * along + along.Left, tip, tip - 3 * along - along.Left), Thin, Layer.Centre, ThingId.WalkingLine));
        return marks;
    }

    /// <summary>A cross where the headroom is least.</summary>
    public static IReadOnlyList<Mark> Least(RoomView view, Placement place)
    {
        if (view.Report.Headroom?.Least is not { } least) return [];
        var at = place.Map(least.At);
        return
        [
            new StrokeMark(Path2.Circle(at, 1.6), Thin, Layer.Dimension),
            StrokeMark.Line(at - new Vector2(2.6, 0), at + new Vector2(2.6, 0), Thin, Layer.Dimension), StrokeMark.Line(at - new Vector2(0, 2.6), at + new Vector2(0, 2.6), Thin, Layer.Dimension),
        ];
    }

    private static IEnumerable<Mark> Wall(RoomWall wall, Placement place)
    {
        var from = 0.0;
        foreach (var opening in wall.Run.Openings.Where(o => o.At < wall.Length).OrderBy(o => o.At))
        {
            var to = Math.Min(opening.At + opening.Width, wall.Length);
            foreach (var mark in Solid(wall, place, from, opening.At)) yield return mark;
            foreach (var mark in Opening(wall, place, opening, to)) yield return mark;
            from = Math.Max(from, to);
        }
        foreach (var mark in Solid(wall, place, from, wall.Length)) yield return mark;
    }

    private static IEnumerable<Mark> Solid(RoomWall wall, Placement place, double from, double to)
    {
        if (to - from < 1) yield break;
        var (a, b, back) = (place.Map(wall.At(from)), place.Map(wall.At(to)), -Band * wall.Inward);
        foreach (var line in Hatch.Lines([Path2.Polygon(a, b, b + back, a + back)], 1.4, Angle.FromDegrees(45), Layer.Site)) yield return line;
        yield return new StrokeMark(Path2.Polyline(a, b), Pens.Visible, Layer.Site);
    }

    private static IEnumerable<Mark> Opening(RoomWall wall, Placement place, WallOpening opening, double to)
    {
        var (a, b, back) = (place.Map(wall.At(opening.At)), place.Map(wall.At(to)), -Band * wall.Inward);
        yield return StrokeMark.Line(a, a + back, Thin, Layer.Site);
        yield return StrokeMark.Line(b, b + back, Thin, Layer.Site);
        if (opening.Kind == OpeningKind.Window)
        {
            foreach (var part in new[] { 0, 0.5, 1 }) yield return StrokeMark.Line(a + part * back, b + part * back, Thin, Layer.Site);
            yield break;
        }
        // The leaf stands open a quarter turn, its sweep an arc.
        var swing = (opening.Swing == Swing.In ? 1 : -1) * a.DistanceTo(b) * wall.Inward;
        var hinge = opening.Swing == Swing.In ? a : a + back;
        var shut = opening.Swing == Swing.In ? b : b + back;
        var turn = (shut - hinge).Cross(swing) > 0 ? 1 : -1;
        yield return StrokeMark.Line(hinge, hinge + swing, Thin, Layer.Site);
        yield return new StrokeMark(new Path2([new(shut, turn * Angle.Tan(Math.PI / 8)), new(hinge + swing)], false), new(0.13, Dash.None, 0.7), Layer.Site);
    }
}
