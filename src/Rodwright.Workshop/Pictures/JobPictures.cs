using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Pictures;

/// <summary>Pictures of whole jobs, for the shelf.</summary>
public static class JobPictures
{
    private const double Width = 96;
    private const double Height = 60;
    private const double Edge = 2; // bare paper all round, mm
    private const double WallDepth = 2.4;
    private const double WallRunOn = 2.5;
    private const double Head = 3.2; // of the arrow

    private static readonly Pen Riser = new(0.4, Dash.None, 0.85);
    private static readonly Pen Board = new(0.45, Dash.None);
    private static readonly Pen Walking = new(0.45, Dash.None);

    /// <summary>The stair in plan on 96 × 60 mm, without lettering: walls, strings, newels, risers, and the walking line with an arrow up. A tall stair lies on its side, up to the right.</summary>
    public static Picture Card(Stair stair)
    {
        var view = new PlanView(stair);
        var room = new Box2(0, 0, Width, Height).Grown(-(Edge + WallDepth));
        var (across, along) = (Ratio(view.Bounds.Width, view.Bounds.Height), Ratio(view.Bounds.Height, view.Bounds.Width));
        // Laid down only where that makes it markedly larger: a plan reads best with its first flight going up.
        var down = along * 1.3 < across;
        var place = Placement.Centred(view.Bounds, room, Scale.OneTo(Math.Clamp(down ? along : across, 1, 1000)), Angle.FromDegrees(down ? -90 : 0));
        return new(Width, Height, [.. Marks(view, place)]);

        double Ratio(double width, double height) => Math.Max(width / room.Width, height / room.Height);
    }

    private static IEnumerable<Mark> Marks(PlanView view, Placement place)
    {
        var plan = view.Stair.Plan;
        foreach (var wall in view.Walls)
        {
            foreach (var mark in WallBand.Draw(place.Map(wall), WallDepth, WallRunOn)) yield return mark;
        }
        for (var k = 1; k < plan.Risers; k++)
        {
            if (plan.Steps[k - 1] == StepKind.Tapered) yield return new FillMark([place.Map(BoundaryWalk.Step(plan, k))], 0.09, Layer.Tint);
        }
        foreach (var riser in plan.RiserLines) yield return place.Stroke(plan.FaceOf(riser), Riser, Layer.Visible);
        foreach (var mark in Up(place.Map(plan.WalkingLine))) yield return mark;
        foreach (var (_, outline) in view.Strings)
        {
            yield return new FillMark([place.Map(outline)], 0, Layer.Visible);
            yield return place.Stroke(outline, Board, Layer.Visible);
        }
        foreach (var (_, outline) in view.Newels)
        {
            yield return new FillMark([place.Map(outline)], 0, Layer.Visible);
            yield return new FillMark([place.Map(outline)], 1, Layer.Visible);
        }
    }

    /// <summary>The walking line, an open ring where it starts and a full head where it goes.</summary>
    private static IEnumerable<Mark> Up(Path2 line)
    {
        var points = line.Flattened(0.02);
        var tip = points[^1];
        var along = (tip - points.Last(p => p.DistanceTo(tip) > 1e-6)).Unit;
        var (back, wing) = (tip - Head * along, Head * 0.34 * along.Left);
        yield return new StrokeMark(line, Walking, Layer.Centre);
        yield return new FillMark([Path2.Circle(points[0], 0.9)], 0, Layer.Centre);
        yield return new StrokeMark(Path2.Circle(points[0], 0.9), Walking, Layer.Centre);
        yield return new FillMark([Path2.Polygon(tip, back + wing, back - wing)], 1, Layer.Centre);
    }
}
