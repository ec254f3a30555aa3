using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>The turn's newel in plan at a larger scale: how far the first and last risers stand from its centre lines, and the narrow ends on its faces.</summary>
public static class TurnDetail
{
    private const double Words = 2.5;
    private const double Stub = 4; // of strings beyond the newel, mm of paper
    private const double ForFigures = 13;

    /// <summary>The marks of the detail; none for a stair without a turn.</summary>
    /// <param name="view">The plan.</param>
    /// <param name="box">Where, mm of paper.</param>
    public static IReadOnlyList<Mark> Draw(PlanView view, Box2 box)
    {
        var plan = view.Stair.Plan;
        if (plan.Turn is not { } turn) return [];
        var half = view.Stair.Job.Practice.Newel / 2;
        var side = view.OuterSide;
        // Figures stand above and on the outer side; below and on the inner side the newel, or a riser that stands past it, is all there is.
        var (down, inner) = (Math.Max(half, turn.FirstRiser), Math.Max(half, turn.LastRiser));
        var scale = Scale.ToFit(half + inner, half + down, box.Width - Stub - ForFigures, box.Height - Stub - ForFigures);
        var f = scale.Factor;
        var centre = new Point2(
            side > 0 ? box.MinX + Stub + inner * f : box.MaxX - Stub - inner * f,
            box.MinY + (box.Height - Stub - ForFigures - (half + down) * f) / 2 + Stub + down * f);
        var place = new Placement(scale, turn.Centre, centre);
        var (to, up, low) = (half * f + ForFigures - 2, centre.Y + half * f + ForFigures - 2, centre.Y - down * f - Stub);
        var window = side > 0
            ? new Box2(box.MinX, low, centre.X + to, up)
            : new Box2(centre.X - to, low, box.MaxX, up);
        var newel = view.Newels.First(n => plan.Newels.First(s => s.Id == n.Part.Id).Role == NewelRole.Turn);
        var lines = new List<Mark>();
        foreach (var (_, line) in view.Nosings.Where(n => n.Riser >= turn.FirstLine && n.Riser <= turn.LastLine)) lines.Add(place.Stroke(line, Pens.Nosing, Layer.Nosing));
        for (var k = turn.FirstLine; k <= turn.LastLine; k++)
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
        var style = DimensionStyle.Usual with { TextHeight = Words };
        var marks = new List<Mark> { new ClipMark(window, lines) };
        var off = place.Map(half) + 4;
        if (turn.FirstRiser > 0.05) marks.AddRange(Offset(c + side * new Vector2(off, 0), new Vector2(0, -place.Map(turn.FirstRiser)), c, turn.FirstRiser, style));
        if (turn.LastRiser > 0.05) marks.AddRange(Offset(c + new Vector2(0, off), side * new Vector2(-place.Map(turn.LastRiser), 0), c, turn.LastRiser, style));
        marks.AddRange(NarrowEnds(plan, place));
        marks.Add(new TextMark(
            new(c.X + side * (2 + place.Map(view.Stair.Plan.InnerThickness / 2)), low - 0.5), $"{newel.Part.Mark}, {scale}", Words, Layer.Lettering,
            side > 0 ? HorizontalAnchor.Start : HorizontalAnchor.End));
        return marks;
    }

    /// <summary>One offset; its figure stands away from the newel.</summary>
    private static IEnumerable<Mark> Offset(Point2 from, Vector2 to, Point2 centre, double value, DimensionStyle style)
    {
        var inward = 2 * (centre - from).Unit;
        foreach (var mark in ChainDimension.Draw([new(from + inward, 0), new(from + to + inward, value)], new(from, to), style))
            yield return mark is TextMark text ? text with { Knockout = true } : mark;
    }

    /// <summary>Figures of the narrow ends, inside the newel along its faces.</summary>
    private static IEnumerable<Mark> NarrowEnds(StairPlan plan, Placement place)
    {
        var taken = new List<Box2>();
        foreach (var step in plan.Turn!.Steps)
        {
            var (a, b) = (plan.Riser(step.Number).Inner, plan.Riser(step.Number + 1).Inner);
            var middle = a.Towards(b, 0.5);
            var alongFace = Math.Abs(a.X - b.X) < 0.01 || Math.Abs(a.Y - b.Y) < 0.01;
            var inward = alongFace
                ? Math.Abs(a.X - b.X) < 0.01 ? new Vector2(Math.Sign(plan.Turn.Centre.X - a.X), 0) : new Vector2(0, -1)
                : (plan.Turn.Centre - middle).Unit;
            if (Math.Abs(middle.X - plan.Turn.Centre.X) > 0.5 * plan.Job.Practice.Newel + 1 || Math.Abs(middle.Y - plan.Turn.Centre.Y) > 0.5 * plan.Job.Practice.Newel + 1) continue;
            var text = new TextMark(place.Map(middle) + (alongFace ? 2.2 : 3.6) * inward, Number.Print(step.NarrowAlongFaces), Words, Layer.Dimension,
                HorizontalAnchor.Middle, VerticalAnchor.Middle, alongFace ? Reading.TurnOf(b - a) : default, knockout: true);
            // Where the steps are many the figures crowd; the table has them all.
            var box = text.Bounds;
            if (taken.Exists(t => t.Overlaps(box))) continue;
            taken.Add(box);
            yield return text;
        }
    }
}
