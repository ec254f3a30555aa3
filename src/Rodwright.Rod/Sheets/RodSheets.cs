using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Sheets;

/// <summary>
/// The rod itself: plan and wall strings on one sheet at one scale. The strings lie low and climb across the sheet; the plan stands in the free corner over
/// their low end.
/// </summary>
public static class RodSheets
{
    private const double Apart = 8; // least paper between plan and strings, mm
    private const double SmallestUseful = 5;
    private static readonly double[] Inwards = [0.3, 0.15, 0];

    /// <summary>The rod's sheet; at the scale wanted or the next smaller one at which plan and strings fit one page together; none when that would be below 1:5.</summary>
    public static IReadOnlyList<Sheet> Make(RodJob rod)
    {
        if (Strings(rod) is not { } strings) return [];
        var plan = new PlanView(rod.Stair);
        foreach (var scale in SheetScales.From(rod.Style.Scale, rod.Units).Where(s => s.Ratio <= SmallestUseful || s == rod.Style.Scale))
            if (At(rod, strings, plan, scale) is { } laid) return [Draw(strings, plan, laid.Start, laid.Strings, laid.Plan)];
        return [];
    }

    /// <summary>The largest usual scale at which plan and strings fit one page of the job's paper together, whatever scale the job wants; null when none does.</summary>
    public static Scale? Largest(RodJob rod)
    {
        if (Strings(rod) is not { } strings) return null;
        var plan = new PlanView(rod.Stair);
        return Scale.UsualIn(rod.Units).FirstOrDefault(scale => At(rod, strings, plan, scale) is not null);
    }

    /// <summary>The wall strings; in a stair without any, its first newel string.</summary>
    private static StringView? Strings(RodJob rod) => StringView.All(rod.Stair, wall: true).Concat(StringView.All(rod.Stair, wall: false)).FirstOrDefault();

    private static (SheetStart Start, Placement Strings, Placement Plan)? At(RodJob rod, StringView strings, PlanView plan, Scale scale)
    {
        var start = SheetStart.At(rod, new("rod", "Rod", "Rod: plan and wall strings", Note: "Riser faces solid, nosings broken"), l => Together(strings, plan, l), scale);
        return start.Fits && Lay(strings, plan, start) is { } places ? (start, places.Strings, places.Plan) : null;
    }

    /// <summary>The larger of both needs each way: necessary, not enough.</summary>
    private static ViewNeed Together(StringView strings, PlanView plan, SheetLettering lettering)
    {
        var (a, b) = (StringFigures.Need(strings, lettering), PlanFigures.Need(plan, lettering));
        return a with { Width = Math.Max(a.Width, b.Width), Height = Math.Max(a.Height, b.Height) };
    }

    private static (Placement Strings, Placement Plan)? Lay(StringView strings, PlanView plan, SheetStart start)
    {
        var (view, scale) = (start.View, start.Scale);
        var (a, b) = (StringFigures.Need(strings, start.Lettering), PlanFigures.Need(plan, start.Lettering));
        var (planWidth, planHeight) = (b.Width * scale.Factor + b.Left + b.Right, b.Height * scale.Factor + b.Top + b.Bottom);
        if (planWidth > view.Width || planHeight > view.Height) return null;
        // Strings: low, and out to the side they climb to. Plan: high, on the other side. Both as far in from the edges as they go without meeting.
        var (width, height) = (a.Width * scale.Factor, a.Height * scale.Factor);
        foreach (var part in Inwards)
        {
            var (inX, inY) = (part * (view.Width - a.Left - a.Right - width), part * (view.Height - a.Top - a.Bottom - height));
            var (planX, planY) = (part * (view.Width - planWidth), part * (view.Height - planHeight));
            var climbsRight = strings.Sense > 0;
            var low = climbsRight ? view.MaxX - a.Right - width - inX : view.MinX + a.Left + inX;
            var left = climbsRight ? view.MinX + planX : view.MaxX - planX - planWidth;
            var stringsAt = new Placement(scale, new(strings.Bounds.MinX, strings.Bounds.MinY), new(low, view.MinY + a.Bottom + inY));
            var planBox = new Box2(left, view.MaxY - planY - planHeight, left + planWidth, view.MaxY - planY);
            var planAt = new Placement(scale, new(plan.Bounds.MinX, plan.Bounds.MinY), new(planBox.MinX + b.Left, planBox.MinY + b.Bottom));
            if (!Meets(strings, stringsAt, planBox.Grown(Apart))) return (stringsAt, planAt);
        }
        return null;
    }

    /// <summary>Whether the strings, their boards or their figures reach into a box.</summary>
    private static bool Meets(StringView strings, Placement place, Box2 box)
    {
        foreach (var part in strings.Parts)
        {
            foreach (var path in new[] { part.FaceSide.Outline, part.Blank.Outline })
            {
                var points = place.Map(path).Flattened(1);
                for (var i = 0; i < points.Count; i++)
                {
                    var (p, q) = (points[i], points[(i + 1) % points.Count]);
                    var steps = 1 + (int)(p.DistanceTo(q) / Apart);
                    for (var k = 0; k < steps; k++) if (Holds(box, p.Towards(q, (double)k / steps))) return true;
                }
            }
        }
        var drawn = place.Map(strings.Bounds);
        // Ordinates stand below, and beyond the upper end.
        return box.MinY < drawn.MinY || (strings.Sense > 0 ? box.MaxX > drawn.MaxX : box.MinX < drawn.MinX);

        static bool Holds(Box2 b, Point2 p) => p.X > b.MinX && p.X < b.MaxX && p.Y > b.MinY && p.Y < b.MaxY;
    }

    private static Sheet Draw(StringView strings, PlanView plan, SheetStart start, Placement stringsAt, Placement planAt)
    {
        var planBox = planAt.Map(plan.Bounds);
        var need = PlanFigures.Need(plan, start.Lettering);
        var planRoom = new Box2(planBox.MinX - need.Left, planBox.MinY - need.Bottom, planBox.MaxX + need.Right, planBox.MaxY + need.Top);
        var inPlan = PlanSheets.On(plan, planAt, start.Lettering, planRoom);
        Mark[] keep = [.. inPlan, new StrokeMark(Path2.Rectangle(planRoom.MinX, planRoom.MinY, planRoom.MaxX, planRoom.MaxY), Pens.Visible, Layer.Frame)];
        var panel = PlanSheets.Panel(plan, start, out _);
        return start.Finish([.. inPlan, .. StringSheets.On(strings, stringsAt, start.Lettering, start.View, keep), .. panel]);
    }
}
