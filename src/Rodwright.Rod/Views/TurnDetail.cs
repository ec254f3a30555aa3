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

    /// <summary>The marks of the detail; none for a stair without a turn.</summary>
    /// <param name="view">The plan.</param>
    /// <param name="box">Where, mm of paper.</param>
    public static IReadOnlyList<Mark> Draw(PlanView view, Box2 box)
    {
        var plan = view.Stair.Plan;
        if (plan.Turn is not { } turn) return [];
        var half = view.Stair.Job.Practice.Newel / 2;
        var reach = half + Math.Max(0.55 * half, Math.Max(turn.FirstRiser, turn.LastRiser) - half + 10);
        var room = box with { MinY = box.MinY + 5 };
        var scale = Scale.ToFit(2 * reach, 2 * reach, room.Width, room.Height);
        var place = new Placement(scale, turn.Centre, room.Centre);
        var size = Math.Min(room.Width, room.Height) / 2;
        var window = new Box2(room.Centre.X - size, room.Centre.Y - size, room.Centre.X + size, room.Centre.Y + size);
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
        var (c, r) = (place.Map(turn.Centre), size);
        lines.Add(StrokeMark.Line(c - new Vector2(r, 0), c + new Vector2(r, 0), Pens.Centre, Layer.Centre));
        lines.Add(StrokeMark.Line(c - new Vector2(0, r), c + new Vector2(0, r), Pens.Centre, Layer.Centre));
        var style = DimensionStyle.Usual with { TextHeight = Words };
        var marks = new List<Mark> { new ClipMark(window, lines) };
        var side = view.OuterSide;
        var off = place.Map(half) + 5;
        if (turn.FirstRiser > 0.05) marks.AddRange(Offset(c + side * new Vector2(off, 0), new Vector2(0, -place.Map(turn.FirstRiser)), c, turn.FirstRiser, style));
        if (turn.LastRiser > 0.05) marks.AddRange(Offset(c + new Vector2(0, off), side * new Vector2(-place.Map(turn.LastRiser), 0), c, turn.LastRiser, style));
        marks.AddRange(NarrowEnds(plan, place));
        marks.Add(new TextMark(new(box.MinX, box.MinY), $"{newel.Part.Mark}, turn newel, {scale}", Words, Layer.Lettering));
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
        foreach (var step in plan.Turn!.Steps)
        {
            var (a, b) = (plan.Riser(step.Number).Inner, plan.Riser(step.Number + 1).Inner);
            var middle = a.Towards(b, 0.5);
            var alongFace = Math.Abs(a.X - b.X) < 0.01 || Math.Abs(a.Y - b.Y) < 0.01;
            var inward = alongFace
                ? Math.Abs(a.X - b.X) < 0.01 ? new Vector2(Math.Sign(plan.Turn.Centre.X - a.X), 0) : new Vector2(0, -1)
                : (plan.Turn.Centre - middle).Unit;
            if (Math.Abs(middle.X - plan.Turn.Centre.X) > 0.5 * plan.Job.Practice.Newel + 1 || Math.Abs(middle.Y - plan.Turn.Centre.Y) > 0.5 * plan.Job.Practice.Newel + 1) continue;
            yield return new TextMark(place.Map(middle) + (alongFace ? 2.2 : 3.6) * inward, Number.Print(step.NarrowAlongFaces), Words, Layer.Dimension,
                HorizontalAnchor.Middle, VerticalAnchor.Middle, alongFace ? Reading.TurnOf(b - a) : default, knockout: true);
        }
    }
}
