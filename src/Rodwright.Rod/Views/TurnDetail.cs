using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>A turn's newel in plan at a larger scale: how far the first and last risers stand from its centre lines, and the narrow ends on its faces.</summary>
public static class TurnDetail
{
    private const double Words = 2.5;
    private const double Stub = 4; // of strings beyond the newel, mm of paper
    private const double ForFigures = 13;

    /// <summary>How many details a stair has: one for each newel of its turns.</summary>
    public static int Count(StairPlan plan) => plan.Turns.Sum(t => t.Newels.Length);

    /// <summary>The marks of one detail; none where the stair has not so many.</summary>
    /// <param name="view">The plan.</param>
    /// <param name="box">Where, mm of paper.</param>
    /// <param name="index">Which of the turns' newels, from the bottom up.</param>
    /// <param name="beside">Scale of the plan it stands beside: a detail that would show no more than the plan is not drawn. Null for a detail that stands alone.</param>
    public static IReadOnlyList<Mark> Draw(PlanView view, Box2 box, int index = 0, Scale? beside = null)
    {
        var plan = view.Stair.Plan;
        var newels = plan.Turns.SelectMany(t => t.Newels.Select(n => (Turn: t, Id: n))).ToList();
        if (index >= newels.Count) return [];
        var (turn, id) = newels[index];
        var site = plan.Newels.First(n => n.Id == id);
        var newel = view.Newels.First(n => n.Part.Id == id);
        var half = view.Stair.Job.Practice.Newel / 2;
        var (first, last) = (id == turn.Newels[0], id == turn.Newels[^1]);
        var (across, along) = (turn.Frame.Across, turn.Frame.Along);
        var (e1, e2) = (first ? turn.FirstRiser : 0, last ? turn.LastRiser : 0);
        var isHalf = turn.Site.Quarters == 2;
        // Figures stand on the sides the risers are measured from; elsewhere the newel, or a riser that stands past it, is all there is.
        (Vector2 Way, double Timber, double Paper)[] reach =
        [
            (across, half, ForFigures), (along, half, isHalf ? Stub : ForFigures),
            (-1 * across, isHalf ? half : Math.Max(half, e2), isHalf ? ForFigures : Stub), (-1 * along, Math.Max(half, Math.Max(e1, isHalf ? e2 : 0)), Stub),
        ];
        var (right, up, left, down) = (Reach(new(1, 0)), Reach(new(0, 1)), Reach(new(-1, 0)), Reach(new(0, -1)));
        var words = along.Y > 0.5 && !isHalf && plan.Turns.Length == 1 && TurnPlaces.FirstSquare(turn) == turn.FirstLine ? 0 : Words + 4; // under the window and the figures there
        var scale = Scale.ToFit(left.Timber + right.Timber, down.Timber + up.Timber, box.Width - left.Paper - right.Paper, box.Height - down.Paper - up.Paper - words, plan.Units);
        if (beside is { Ratio: > 5 } plain && scale.Ratio >= plain.Ratio) return [];
        var f = scale.Factor;
        var centre = new Point2(
            across.X < -0.5 && !isHalf ? box.MaxX - right.Paper - right.Timber * f : box.MinX + left.Paper + left.Timber * f,
            box.MinY + words + (box.Height - words - down.Paper - up.Paper - (down.Timber + up.Timber) * f) / 2 + down.Paper + down.Timber * f);
        var place = new Placement(scale, site.Centre, centre);
        var window = new Box2(centre.X - Past(left), centre.Y - Past(down), centre.X + Past(right), centre.Y + Past(up));
        var lines = new List<Mark>();
        var (from, to) = (TurnPlaces.FirstSquare(turn), TurnPlaces.LastSquare(turn));
        foreach (var (_, line) in view.Nosings.Where(n => n.Riser >= from && n.Riser <= to)) lines.Add(place.Stroke(line, Pens.Nosing, Layer.Nosing));
        for (var k = from; k <= to; k++)
            lines.Add(place.Stroke(Path2.Polyline(plan.Riser(k).Inner, plan.Riser(k).Outer), Pens.Visible, Layer.Visible));
        foreach (var (_, outline) in view.Strings)
        {
            lines.Add(new FillMark([place.Map(outline)], 0, Layer.Visible));
            lines.Add(place.Stroke(outline, new Pen(0.25, Dash.None), Layer.Visible));
        }
        lines.Add(new FillMark([place.Map(newel.Outline)], 0, Layer.Visible));
        lines.Add(place.Stroke(newel.Outline, Pens.Outline, Layer.Visible, newel.Part.Id));
        var c = centre;
        lines.Add(StrokeMark.Line(new(window.MinX, c.Y), new(window.MaxX, c.Y), Pens.Centre, Layer.Centre));
        lines.Add(StrokeMark.Line(new(c.X, window.MinY), new(c.X, window.MaxY), Pens.Centre, Layer.Centre));
        var style = DimensionStyle.Usual with { TextHeight = Words, Units = plan.Units };
        var marks = new List<Mark> { new ClipMark(window, lines) };
        var off = place.Map(half) + 4;
        if (e1 > 0.05) marks.AddRange(Offset(c + off * across, -place.Map(e1) * along, c, e1, style));
        if (e2 > 0.05) marks.AddRange(isHalf ? Offset(c - off * across, -place.Map(e2) * along, c, e2, style) : Offset(c + off * along, -place.Map(e2) * across, c, e2, style));
        marks.AddRange(NarrowEnds(plan, turn, site.Centre, place));
        // Figures in feet and inches are long: where scale and mark together would run into one, the mark stands alone.
        var captions = new[] { $"{newel.Part.Mark}, {scale}", newel.Part.Mark }.Select(Caption).ToList();
        marks.Add(captions.Find(t => !plan.Units.IsInches || !marks.OfType<TextMark>().Any(m => m.Bounds.Grown(0.3).Overlaps(t.Bounds))) ?? captions[^1]);
        return marks;

        TextMark Caption(string text) => words > 0
            ? new(new(c.X, box.MinY + 0.5), text, Words, Layer.Lettering, HorizontalAnchor.Middle)
            : new(new(c.X + across.X * (2 + place.Map(view.Stair.Plan.InnerThickness / 2)), window.MinY - 0.5), text, Words, Layer.Lettering,
                across.X > 0 ? HorizontalAnchor.Start : HorizontalAnchor.End);

        (double Timber, double Paper) Reach(Vector2 way) => reach.Where(r => r.Way.Dot(way) > 0.5).Select(r => (r.Timber, r.Paper)).First();

        double Past((double Timber, double Paper) side) => side.Timber * f + side.Paper - (side.Paper > Stub ? 2 : 0);
    }

    /// <summary>One offset; its figure stands away from the newel.</summary>
    private static IEnumerable<Mark> Offset(Point2 from, Vector2 to, Point2 centre, double value, DimensionStyle style)
    {
        var inward = 2 * (centre - from).Unit;
        foreach (var mark in ChainDimension.Draw([new(from + inward, 0), new(from + to + inward, value)], new(from, to), style))
            yield return mark is TextMark text ? text with { Knockout = true } : mark;
    }

    /// <summary>Figures of the narrow ends, inside the newel along its faces.</summary>
    private static IEnumerable<Mark> NarrowEnds(StairPlan plan, TurnPlan turn, Point2 centre, Placement place)
    {
        var taken = new List<Box2>();
        var reach = 0.5 * plan.Job.Practice.Newel + 1;
        foreach (var step in turn.Steps)
        {
            var (a, b) = (TurnPlaces.Near(plan, turn, plan.Riser(step.Number)), TurnPlaces.Near(plan, turn, plan.Riser(step.Number + 1)));
            var middle = a.Towards(b, 0.5);
            var (upright, level) = (Math.Abs(a.X - b.X) < 0.01, Math.Abs(a.Y - b.Y) < 0.01);
            var inward = upright ? new Vector2(Math.Sign(centre.X - a.X), 0) : level ? new Vector2(0, Math.Sign(centre.Y - a.Y)) : (centre - middle).Unit;
            if (Math.Abs(middle.X - centre.X) > reach || Math.Abs(middle.Y - centre.Y) > reach) continue;
            var alongFace = upright || level;
            var text = new TextMark(place.Map(middle) + (alongFace ? 2.2 : 3.6) * inward, plan.Units.Print(step.NarrowAlongFaces), Words, Layer.Dimension,
                HorizontalAnchor.Middle, VerticalAnchor.Middle, alongFace ? Reading.TurnOf(b - a) : default, knockout: true);
            // Where the steps are many the figures crowd; the table has them all.
            var box = text.Bounds;
            if (taken.Exists(t => t.Overlaps(box))) continue;
            taken.Add(box);
            yield return text;
        }
    }
}
