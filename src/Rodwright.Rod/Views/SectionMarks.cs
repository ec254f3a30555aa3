using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>Draws the section along the walking line: stair, floors, what is above; on sheets and on screens alike.</summary>
public static class SectionMarks
{
    private static readonly Pen Thin = new(0.25, Dash.None);

    /// <summary>Treads, risers, landings and the pitch line through the nosings.</summary>
    public static IEnumerable<Mark> Stair(SectionView view, Placement place)
    {
        var (plan, practice) = (view.Stair.Plan, view.Stair.Job.Practice);
        for (var k = 1; k <= plan.Risers; k++)
        {
            var (s, top) = (view.Risers[k - 1], k * plan.Rise);
            var kind = plan.Steps[k - 1];
            var (thick, back) = kind switch
            {
                StepKind.Floor => (practice.Tread, s - practice.Nosing + practice.NosingPiece),
                StepKind.Landing => (practice.FloorBoards, view.Risers[k]),
                _ => (practice.Tread, view.Risers[k] + (practice.RiserOnTread ? practice.Riser : 0)),
            };
            yield return Box(place, s - practice.Nosing, top - thick, back, top, Thin, kind == StepKind.Floor ? ThingId.UpperFloor : ThingId.Tread(k));
            yield return Box(place, s, top - plan.Rise, s + practice.Riser, top - thick, Thin, ThingId.Riser(k));
        }
        yield return place.Stroke(Path2.Polyline(view.PitchLine), Pens.Centre, Layer.Centre, ThingId.WalkingLine);
    }

    /// <summary>Both floors; the upper one cut through where it hangs over the line.</summary>
    public static IEnumerable<Mark> Floors(SectionView view, Placement place)
    {
        var (box, height) = (view.Bounds, view.Stair.Job.Survey.Height);
        var (a, b) = (place.Map(new Point2(box.MinX, 0)), place.Map(new Point2(box.MaxX, 0)));
        foreach (var line in Hatch.Lines([Path2.Polygon(a - new Vector2(0, 2.4), b - new Vector2(0, 2.4), b, a)], 1.4, Angle.FromDegrees(45), Layer.Site, of: ThingId.Floor)) yield return line;
        yield return new StrokeMark(Path2.Polyline(a, b), Pens.Visible, Layer.Site, ThingId.Floor);
        if (view.Stair.Job.Survey.Well is not { } well)
        {
            yield return place.Stroke(Path2.Polyline(new Point2(view.Arrival, height), new Point2(box.MaxX, height)), Pens.Visible, Layer.Site, ThingId.UpperFloor);
            yield break;
        }
        foreach (var (_, points) in view.Above.Where(x => x.Of.IsTrimmer))
        {
            // The floor round the well, cut through, and beyond the trimmer the floor one arrives on.
            foreach (var (from, to) in Split(points[0].X, points[^1].X, view.Arrival))
            {
                var slab = place.Map(Path2.Rectangle(from, height - well.Trimmer.Mean, to, height));
                foreach (var line in Hatch.Lines([slab], 1.8, Angle.FromDegrees(45), Layer.Site)) yield return line;
                yield return new StrokeMark(slab, Thin, Layer.Site, ThingId.UpperFloor);
            }
        }
    }

    private static IEnumerable<(double From, double To)> Split(double from, double to, double at)
    {
        if (from < at - 1 && to > at + 1)
        {
            yield return (from, at);
            yield return (at, to);
        }
        else yield return (from, to);
    }

    /// <summary>Undersides of ceilings.</summary>
    public static IEnumerable<Mark> Above(SectionView view, Placement place)
    {
        var window = place.Map(view.Bounds);
        foreach (var (_, points) in view.Above.Where(x => !x.Of.IsTrimmer))
            yield return new ClipMark(window, [place.Stroke(Path2.Polyline(points), Thin, Layer.Site, ThingId.Ceiling)]);
    }

    private static StrokeMark Box(Placement place, double left, double low, double right, double high, Pen pen, string of) =>
        new(place.Map(Path2.Rectangle(Math.Min(left, right - 0.1), low, right, Math.Max(high, low + 0.1))), pen, Layer.Visible, of);
}
