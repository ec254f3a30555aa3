using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;

namespace Rodwright.Rod.Views;

/// <summary>Draws the stair in plan: walls, risers, nosings, walking line, strings, newels.</summary>
public static class PlanMarks
{
    /// <summary>Depth of the hatched band that stands for a wall, mm of paper.</summary>
    public const double WallDepth = 3;

    private const double WallRunOn = 5;
    private const double LeastNosing = 0.7;

    /// <summary>All lines and tints, without lettering.</summary>
    /// <param name="view">What is drawn.</param>
    /// <param name="place">Where.</param>
    /// <param name="joints">Whether to show every joint through the pieces that take it; otherwise, at 1:5 and larger, only the housed ends of treads.</param>
    public static IReadOnlyList<Mark> Draw(PlanView view, Placement place, bool joints = false)
    {
        var plan = view.Stair.Plan;
        var marks = new List<Mark>();
        for (var i = 0; i < view.Walls.Length; i++) marks.AddRange(Wall(place.Map(view.Walls[i]), view.WallParts[i]));
        // Nosings closer to their risers than this would run into them.
        if (place.Map(view.Stair.Job.Practice.Nosing) >= LeastNosing)
            foreach (var (riser, line) in view.Nosings) marks.Add(place.Stroke(line, Pens.Nosing, Layer.Nosing, ThingId.Nosing(riser)));
        foreach (var riser in plan.RiserLines)
            marks.Add(place.Stroke(plan.FaceOf(riser), RodPens.RiserFace(place.Scale), Layer.Visible, ThingId.Riser(riser.Number)));
        marks.AddRange(WalkingLine(place.Map(plan.WalkingLine)));
        foreach (var (part, outline) in view.Strings) marks.AddRange(Piece(part, place.Map(outline), Pens.Visible));
        foreach (var (part, outline) in view.Newels) marks.AddRange(Piece(part, place.Map(outline), Pens.Outline));
        if (joints) marks.AddRange(PlanJoints.Draw(view.Stair.Kit, place));
        else if (place.Scale.Ratio <= 5) marks.AddRange(HousedEnds(view, place));
        return marks;
    }

    private static IEnumerable<Mark> Piece(Part part, Path2 outline, Pen pen)
    {
        yield return new FillMark([outline], 0, Layer.Visible, part.Id);
        yield return new StrokeMark(outline, pen, Layer.Visible, part.Id);
    }

    /// <summary>Ends of treads and risers in strings and newels: hidden, seen only through the pieces that take them.</summary>
    private static IEnumerable<Mark> HousedEnds(PlanView view, Placement place)
    {
        var ends = view.Stair.Kit.Parts
            .Where(p => p.Kind is PartKind.Tread or PartKind.TaperedTread or PartKind.NosingPiece)
            .Select(p => place.Stroke(Footprint.Of(p), Pens.Hidden, Layer.Hidden, p.Id)).ToList();
        foreach (var (_, outline) in view.Strings.Concat(view.Newels))
        {
            var window = place.Map(outline.Bounds);
            var seen = ends.Where(e => e.Bounds.Overlaps(window)).ToList();
            if (seen.Count > 0) yield return new ClipMark(window, seen);
        }
    }

    private static IEnumerable<Mark> Wall(Path2 face, PlanWall wall)
    {
        var of = wall.Id;
        var points = face.Vertices.Select(v => v.At).ToList();
        if (wall.StartsFree) points[0] -= WallRunOn * (points[1] - points[0]).Unit;
        if (wall.EndsFree) points[^1] += WallRunOn * (points[^1] - points[^2]).Unit;
        var back = PlanView.Offset(points, WallDepth).Vertices.Select(v => v.At).Reverse();
        foreach (var line in Hatch.Lines([Path2.Polygon([.. points, .. back])], 1.4, Angle.FromDegrees(45), Layer.Site, of: of)) yield return line;
        yield return new StrokeMark(Path2.Polyline(points), Pens.Visible, Layer.Site, of);
    }

    private static IEnumerable<Mark> WalkingLine(Path2 line)
    {
        var (tip, along) = PathEnd.Of(line);
        var (back, wing) = (tip - 3.5 * along, 1.1 * along.Left);
        yield return new StrokeMark(line, Pens.Centre, Layer.Centre, ThingId.WalkingLine);
        yield return new StrokeMark(Path2.Circle(line.Vertices[0].At, 1), Pens.Centre with { Dash = Dash.None }, Layer.Centre, ThingId.WalkingLine);
        yield return new StrokeMark(Path2.Polyline(back + wing, tip, back - wing), Pens.Nosing with { Dash = Dash.None }, Layer.Centre, ThingId.WalkingLine);
    }
}
