using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>Running ordinates of the risers along the outer faces, widths across the foot.</summary>
public static class PlanFigures
{
    private const double Off = PlanMarks.WallDepth + 6; // from the drawing to the line of ordinates, mm of paper

    /// <summary>The room a plan needs with its figures.</summary>
    public static ViewNeed Need(PlanView view, SheetLettering lettering)
    {
        var (first, second) = Rows(view.Stair.Plan);
        var side = Off + RowStop.Strip(lettering, first);
        var top = second.Count > 0 ? Off + RowStop.Strip(lettering, second) : 9;
        const double bare = 9;
        return new(view.Bounds.Width, view.Bounds.Height, view.OuterSide > 0 ? bare : side, view.OuterSide > 0 ? side : bare, top, Overall(lettering) + 3 + 2 * lettering.Figures);
    }

    /// <summary>The figures.</summary>
    public static IReadOnlyList<Mark> Draw(PlanView view, Placement place, SheetLettering lettering)
    {
        var plan = view.Stair.Plan;
        var box = place.Map(view.Bounds);
        var (first, second) = Rows(plan);
        var origin = plan.Riser(1).Outer;
        var x = view.OuterSide > 0 ? box.MaxX : box.MinX;
        var marks = new List<Mark>();
        var up = first.Select(r => new DimensionStop(new(x + view.OuterSide * PlanMarks.WallDepth, place.Map(new Point2(0, origin.Y + r.Value)).Y), r.Value, r.Note, r.Of));
        var beside = RunningDimension.Draw(up, new(new(x + view.OuterSide * Off, 0), new(0, 1)), lettering.Dimensions);
        marks.AddRange(beside);
        if (second.Count > 0)
        {
            var corner = plan.Outer.Edges[0].To.X;
            var across = second.Select(r => new DimensionStop(
                new(place.Map(new Point2(corner - view.OuterSide * r.Value, 0)).X, box.MaxY + PlanMarks.WallDepth), r.Value, r.Note, r.Of)).ToList();
            marks.AddRange(FigureRows.Apart(beside,
                more => RunningDimension.Draw(across, new(new(0, box.MaxY + Off + more), new(-view.OuterSide, 0)), lettering.Dimensions)));
        }
        marks.AddRange(FigureRows.Apart(beside, more => [.. Widths(view, place, lettering, box.MinY - more)]));
        return marks;
    }

    /// <summary>The strips of paper the figures take, out to the edge of the room: no label strays into them.</summary>
    internal static IEnumerable<Box2> Strips(PlanView view, Placement place, Box2 room)
    {
        var box = place.Map(view.Bounds);
        yield return view.OuterSide > 0 ? room with { MinX = box.MaxX } : room with { MaxX = box.MinX };
        if (view.Stair.Plan.Turn is not null) yield return room with { MinY = box.MaxY };
        yield return room with { MaxY = box.MinY - 6 };
    }

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

    /// <summary>Risers along the first outer face from the first riser, and along the second from the corner.</summary>
    private static (List<RowStop> First, List<RowStop> Second) Rows(StairPlan plan)
    {
        var (first, second) = (new List<RowStop>(), new List<RowStop>());
        var datum = plan.Riser(1).Outer;
        if (plan.Turn is null) return ([.. plan.RiserLines.Select(r => new RowStop(r.Outer.Y - datum.Y, Name(r), ThingId.Riser(r.Number)))], second);
        var corner = plan.Outer.Edges[0].To;
        var onCorner = false;
        foreach (var riser in plan.RiserLines)
        {
            var isCorner = riser.Outer.DistanceTo(corner) < 0.05;
            onCorner |= isCorner;
            if (isCorner || Math.Abs(riser.Outer.X - corner.X) < 0.01) first.Add(new(riser.Outer.Y - datum.Y, isCorner ? $"{Name(riser)}, corner" : Name(riser), ThingId.Riser(riser.Number)));
            else second.Add(new(Math.Abs(riser.Outer.X - corner.X), Name(riser), ThingId.Riser(riser.Number)));
        }
        if (!onCorner) first.Add(new(corner.Y - datum.Y, "corner", ThingId.Corner));
        second.Insert(0, new(0, "corner", ThingId.Corner));
        return (first, second);
    }

    private static string Name(RiserLine riser) => $"riser {Number.Print(riser.Number, 0)}";
}
