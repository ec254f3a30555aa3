using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>Running ordinates of the risers along the far faces of every flight and turn, widths across the foot.</summary>
public static class PlanFigures
{
    private const double Off = PlanMarks.WallDepth + 6; // from the drawing to the line of ordinates, mm of paper
    private const double Bare = 9; // beside the drawing where no figures stand, mm of paper
    private const double Between = 150; // rows nearer to one another than this do not share a strip, mm of timber

    /// <summary>The room a plan needs with its figures.</summary>
    public static ViewNeed Need(PlanView view, SheetLettering lettering)
    {
        var rows = Placed(view.Stair.Plan, lettering);
        return new(view.Bounds.Width, view.Bounds.Height, Strip(new(-1, 0), Bare), Strip(new(1, 0), Bare), Strip(new(0, 1), Bare),
            Strip(new(0, -1), 0) + Overall(lettering) + 3 + 2 * lettering.Figures);

        double Strip(Vector2 side, double bare) => Depth(rows, side, lettering) is > 0 and var depth ? depth : bare;
    }

    /// <summary>The figures.</summary>
    public static IReadOnlyList<Mark> Draw(PlanView view, Placement place, SheetLettering lettering)
    {
        var box = place.Map(view.Bounds);
        var marks = new List<Mark>();
        var rows = Placed(view.Stair.Plan, lettering);
        foreach (var (row, side, out1) in rows)
            marks.AddRange(FigureRows.Apart(marks, more => Row(row, side, out1 + more)));
        var floor = box.MinY - Depth(rows, new(0, -1), lettering);
        var first = marks.ToList();
        marks.AddRange(FigureRows.Apart(first, more => [.. Widths(view, place, lettering, floor - more)]));
        return marks;

        IReadOnlyList<Mark> Row(FigureRow row, Vector2 side, double out1)
        {
            var edge = side.X > 0.5 ? box.MaxX : side.X < -0.5 ? box.MinX : side.Y > 0.5 ? box.MaxY : box.MinY;
            var level = Math.Abs(side.Y) > 0.5;
            var sense = level ? side.Y : side.X;
            var stops = row.Stops.Select(s => new DimensionStop(OnEdge(place.Map(row.Datum + s.Value * row.Along), edge + sense * (PlanMarks.WallDepth + out1)), s.Value, s.Note, s.Of)).ToList();
            // The line runs the way the ordinates count: figures read away from the drawing on either side.
            return RunningDimension.Draw(stops, new(OnEdge(Point2.Origin, edge + sense * (Off + out1)), level ? new Vector2(row.Along.X, 0) : new Vector2(0, row.Along.Y)), lettering.Dimensions);

            Point2 OnEdge(Point2 p, double off) => level ? new(p.X, off) : new(off, p.Y);
        }
    }

    /// <summary>The strips of paper the figures take, out to the edge of the room: no label strays into them.</summary>
    internal static IEnumerable<Box2> Strips(PlanView view, Placement place, Box2 room)
    {
        var box = place.Map(view.Bounds);
        var sides = Placed(view.Stair.Plan, SheetLettering.For(Drawings.Paper.PaperSize.A3, view.Stair.Units)).Select(r => r.Side).ToList();
        if (sides.Exists(s => s.X > 0.5)) yield return room with { MinX = box.MaxX };
        if (sides.Exists(s => s.X < -0.5)) yield return room with { MaxX = box.MinX };
        if (sides.Exists(s => s.Y > 0.5)) yield return room with { MinY = box.MaxY };
        yield return room with { MaxY = box.MinY - 6 };
    }

    /// <summary>Each row with the side of the drawing it stands on and how far out: beside its own faces, or, where another row is there, opposite; beyond the other where both are taken.</summary>
    private static List<(FigureRow Row, Vector2 Side, double Out)> Placed(StairPlan plan, SheetLettering lettering)
    {
        var placed = new List<(FigureRow Row, Vector2 Side, double Out)>();
        foreach (var row in FigureRow.Of(plan))
        {
            if (row.Stops.Count < 2 && plan.Turns.Length > 0) continue;
            var side = Rounded(row.Outward);
            // The foot of the plan belongs to the widths.
            if (side.Y < -0.5) side = -1 * side;
            var (own, other) = (OutOn(side), side.Y > 0.5 ? double.PositiveInfinity : OutOn(-1 * side));
            placed.Add(other < own ? (row, -1 * side, other) : (row, side, own));

            double OutOn(Vector2 on) => placed.Where(p => p.Side.Dot(on) > 0.5 && p.Row.Span.From < row.Span.To + Between && p.Row.Span.To > row.Span.From - Between)
                .Select(p => p.Out + RowStop.Strip(lettering, p.Row.Stops) + 2).DefaultIfEmpty(0).Max();
        }
        return placed;
    }

    private static Vector2 Rounded(Vector2 v) => new(Math.Round(v.X), Math.Round(v.Y));

    private static double Depth(List<(FigureRow Row, Vector2 Side, double Out)> rows, Vector2 side, SheetLettering lettering) =>
        rows.Where(r => r.Side.Dot(side) > 0.5).Select(r => Off + r.Out + RowStop.Strip(lettering, r.Row.Stops)).DefaultIfEmpty(0).Max();

    private static IEnumerable<Mark> Widths(PlanView view, Placement place, SheetLettering lettering, double floor)
    {
        var plan = view.Stair.Plan;
        var k = view.OuterSide;
        var inner = plan.InnerThickness / 2;
        double[] at = [-inner, inner, inner + plan.ClearWidth, inner + plan.ClearWidth + plan.OuterThickness];
        var strings = plan.Strings;
        string?[] of = [null, strings.FirstOrDefault(s => s.Inner)?.Id, ThingId.ClearWidth, strings.FirstOrDefault(s => !s.Inner)?.Id];
        var stops = at.Select((d, i) => new DimensionStop(new(place.Map(new Point2(k * d, 0)).X, floor), d, Of: of[i])).ToList();
        var along = new Vector2(1, 0);
        foreach (var mark in ChainDimension.Draw(stops, new(new(0, floor - 7), along), lettering.Dimensions)) yield return mark;
        DimensionStop[] ends = [new(new(stops[0].At.X, floor - Overall(lettering) + 4), 0), new(new(stops[^1].At.X, floor - Overall(lettering) + 4), at[^1] - at[0], Of: ThingId.Width)];
        foreach (var mark in ChainDimension.Draw(ends, new(new(0, floor - Overall(lettering)), along), lettering.Dimensions)) yield return mark;
    }

    /// <summary>From the foot of the plan to the line of the overall width, mm of paper.</summary>
    private static double Overall(SheetLettering lettering) => 13 + 3 * lettering.Figures;
}
